package pippinry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The feature files and the jars in the image say the same. */
class FeatureFilesIT {

    private static final Pattern BUNDLE = Pattern.compile("\\{\\s*\"id\"\\s*:\\s*\"([^:]+):([^:]+):([^\"]+)\"");

    @Test
    void everyJarIsNamedByAFeatureAndEveryNameHasAJar() throws IOException {
        assertEquals(named(), shipped(), "a jar of an earlier build? mvn clean sweeps it out");
    }

    @Test
    void noPlaceholderIsLeftOver() throws IOException {
        for (Path feature : list("features")) {
            assertEquals(
                    -1, Files.readString(feature).replace("between @ signs", "").indexOf('@'), feature.toString());
        }
    }

    private static Set<String> named() throws IOException {
        Set<String> jars = new TreeSet<>();
        for (Path feature : list("features")) {
            Matcher bundle = BUNDLE.matcher(Files.readString(feature));
            while (bundle.find()) {
                jars.add(bundle.group(1) + "." + bundle.group(2) + "-" + bundle.group(3) + ".jar");
            }
        }
        return jars;
    }

    private static Set<String> shipped() throws IOException {
        Set<String> jars = new TreeSet<>();
        list("bundles").forEach(jar -> jars.add(jar.getFileName().toString()));
        return jars;
    }

    private static List<Path> list(String folder) throws IOException {
        try (Stream<Path> files = Files.list(RunningProgram.IMAGE.resolve(folder))) {
            return files.toList();
        }
    }
}
