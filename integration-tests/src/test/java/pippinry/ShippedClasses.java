package pippinry;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.jar.JarFile;
import java.util.stream.Stream;

/**
 * Our classes as the image ships them.
 *
 * @param bundles names of our bundles, longest first, because {@code pippinry.traits.apple} lies within the package of
 *     {@code pippinry.traits}
 */
record ShippedClasses(JavaClasses classes, List<String> bundles) {

    private static final String GROUP = "pippinry.bundles.";

    static ShippedClasses read() throws IOException {
        try (Stream<Path> files = Files.list(RunningProgram.IMAGE.resolve("bundles"))) {
            List<Path> jars = files.filter(jar -> jar.getFileName().toString().startsWith(GROUP))
                    .toList();
            return new ShippedClasses(imported(jars), names(jars));
        }
    }

    private static JavaClasses imported(List<Path> jars) {
        return new ClassFileImporter()
                .withImportOption(location -> location.contains("/pippinry/")) // no library inside one of our wraps
                .importJars(jars.stream().map(ShippedClasses::open).toList());
    }

    private static List<String> names(List<Path> jars) {
        return jars.stream()
                .map(jar -> jar.getFileName().toString().substring(GROUP.length()))
                .map(name -> name.substring(0, name.indexOf('-')))
                .sorted(Comparator.comparingInt(String::length).reversed())
                .toList();
    }

    /** The bundle that a class came in; empty for the JDK's and the libraries'. */
    Optional<String> bundleOf(JavaClass type) {
        String inside = type.getPackageName() + ".";
        return bundles.stream().filter(name -> inside.startsWith(name + ".")).findFirst();
    }

    private static JarFile open(Path jar) {
        try {
            return new JarFile(jar.toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
