package pippinry.exchange.internal.bring;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pippinry.model.Program;
import pippinry.model.number.NearestNumbers;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;

/** Finds the record that a cell names by its code, its name or a number written with fewer zeros. */
final class Known {

    private static final Pattern SHORT_NUMBER = Pattern.compile("(\\d{1,2})[-./](\\d{1,3})[-./](\\d{1,4})([A-Za-z]?)");
    private static final int NEAREST = 3;

    private final Program program;
    private final Map<Kind<?>, Map<String, String>> inList = new HashMap<>();
    private final Map<String, Set<String>> byName = new HashMap<>();
    private final Set<String> names = new LinkedHashSet<>();

    Known(Program program) {
        this.program = program;
        program.table(Kinds.GENOTYPES)
                .forEach(row -> name(row.value().name(), row.value().code().text()));
        program.table(Kinds.NAMES).forEach(row -> {
            String subject = row.value().subject().text();
            if (program.table(Kinds.GENOTYPES).find(subject).isPresent()) {
                name(row.value().name(), subject);
            }
        });
    }

    private void name(String name, String code) {
        if (!name.isBlank()) {
            names.add(name.strip());
            byName.computeIfAbsent(small(name), any -> new LinkedHashSet<>()).add(code);
        }
    }

    /** A record of this kind stands in the list itself. */
    void add(Kind<?> kind, String code, String name) {
        inList.computeIfAbsent(kind, any -> new HashMap<>()).put(small(code), code);
        if (kind == Kinds.GENOTYPES) {
            name(name, code);
        }
    }

    private static String small(String text) {
        return text.strip().toLowerCase(Locale.ROOT);
    }

    String code(Kind<?> kind, String text) throws Unclear {
        Optional<String> code = exact(kind, text).or(() -> exact(kind, full(text)));
        if (code.isPresent()) {
            return code.get();
        }
        Set<String> named = kind == Kinds.GENOTYPES ? byName.getOrDefault(small(text), Set.of()) : Set.of();
        if (named.size() == 1) {
            return named.iterator().next();
        }
        throw new Unclear(
                named.isEmpty() ? missing(kind, text) : "'" + text + "' may be " + String.join(" or ", named));
    }

    private Optional<String> exact(Kind<?> kind, String code) {
        return program.table(kind).find(code).isPresent()
                ? Optional.of(code)
                : Optional.ofNullable(inList.getOrDefault(kind, Map.of()).get(small(code)))
                        .or(() -> Optional.of(code.toUpperCase(Locale.ROOT))
                                .filter(upper -> program.table(kind).find(upper).isPresent()));
    }

    /** {@code 26-14-73} as it stands on a tag. */
    static String full(String text) {
        Matcher number = SHORT_NUMBER.matcher(text.strip());
        return number.matches()
                ? "%02d-%03d-%03d%s"
                        .formatted(
                                Integer.parseInt(number.group(1)),
                                Integer.parseInt(number.group(2)),
                                Integer.parseInt(number.group(3)),
                                number.group(4).toUpperCase(Locale.ROOT))
                : text.strip();
    }

    private String missing(Kind<?> kind, String text) {
        List<String> codes = new ArrayList<>();
        addCodes(kind, codes);
        if (kind == Kinds.GENOTYPES) {
            codes.addAll(names);
        }
        List<String> near = NearestNumbers.of(text, codes.stream(), NEAREST);
        return "no '" + text + "' is on file in " + kind
                + (near.isEmpty() ? "" : "; near it: " + String.join(", ", near));
    }

    private <T extends Record> void addCodes(Kind<T> kind, List<String> codes) {
        program.table(kind).forEach(row -> kind.keyOf(row.value()).ifPresent(codes::add));
    }
}
