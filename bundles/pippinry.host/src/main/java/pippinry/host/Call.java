package pippinry.host;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * How the program was called: {@code [--image DIR] [--feature NAME] [--without BUNDLE]... [--with JAR]... ARGS}.
 *
 * @param image folder with {@code lib}, {@code bundles} and {@code features}
 * @param feature name of the feature file to start, without its ending
 * @param without symbolic names of bundles that are left out
 * @param with jars that are started besides those of the feature
 * @param args what follows the launcher's own options; the program's to read
 */
record Call(Path image, String feature, Set<String> without, List<Path> with, List<String> args) {

    static final String USUAL_FEATURE = "apple";

    Call {
        without = Set.copyOf(without);
        with = List.copyOf(with);
        args = List.copyOf(args);
    }

    static Call parse(String[] args, Map<String, String> environment) {
        Path image = Path.of(".");
        String feature = environment.getOrDefault("PIPPINRY_FEATURE", USUAL_FEATURE);
        Set<String> without = new LinkedHashSet<>(listed(environment.getOrDefault("PIPPINRY_WITHOUT", "")));
        List<Path> with = new ArrayList<>();
        Deque<String> rest = new ArrayDeque<>(Arrays.asList(args));
        while (isOurs(rest.peek())) {
            String option = rest.remove();
            String value = valueOf(option, rest);
            switch (option) {
                case "--image" -> image = Path.of(value);
                case "--feature" -> feature = value;
                case "--without" -> without.addAll(listed(value));
                default -> with.add(Path.of(value));
            }
        }
        return new Call(image.toAbsolutePath().normalize(), feature, without, with, List.copyOf(rest));
    }

    private static boolean isOurs(String word) {
        return word != null
                && Set.of("--image", "--feature", "--without", "--with").contains(word);
    }

    private static String valueOf(String option, Deque<String> rest) {
        if (rest.isEmpty()) {
            throw CannotStart.wrongCall(option + " needs a value after it");
        }
        return rest.remove();
    }

    private static List<String> listed(String commas) {
        return Arrays.stream(commas.split(","))
                .map(String::strip)
                .filter(name -> !name.isEmpty())
                .toList();
    }

    Assembly assembly() {
        return new FeatureFolder(image).assemble(feature).without(without).with(with);
    }
}
