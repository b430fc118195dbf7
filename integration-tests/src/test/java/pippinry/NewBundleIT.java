package pippinry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The script that makes a bundle, run in a copy of the poms and of the model. */
class NewBundleIT {

    private static final Path SOURCES = Path.of("..").toAbsolutePath().normalize();

    @TempDir
    Path copy;

    @BeforeEach
    void copyWhatTheScriptTouches() throws IOException {
        try (Stream<Path> files = Files.walk(SOURCES)) {
            for (Path file : files.filter(NewBundleIT::isWanted).toList()) {
                Path to = copy.resolve(SOURCES.relativize(file));
                Files.createDirectories(to.getParent());
                Files.copy(file, to);
            }
        }
    }

    private static boolean isWanted(Path file) {
        String path = SOURCES.relativize(file).toString();
        return Files.isRegularFile(file)
                && !path.contains("target/")
                && (path.endsWith("pom.xml")
                        || path.endsWith("new-bundle.sh")
                        || path.matches("features/[^/]*[.]json")
                        || path.startsWith("bundles/pippinry.model/src/main"));
    }

    @Test
    void aNewModuleBuildsAndIsNamedByAFeature() throws Exception {
        assertEquals(0, run("sh", "bundles/new-bundle.sh", "pippinry.fence", "Fence", "--contract"));
        assertEquals(0, run(maven("-pl", "bundles/pippinry.fence", "-am")));
        assertTrue(Files.exists(copy.resolve("bundles/pippinry.fence/target/pippinry.fence-0.1.0-SNAPSHOT.jar")));
        assertTrue(names("features/modules.json", "pippinry.bundles:pippinry.fence:@project.version@"));
        assertTrue(names("features/pom.xml", "<artifactId>pippinry.fence</artifactId>"));
    }

    @Test
    void aNewCropPackGetsAFeatureOfItsOwn() throws Exception {
        assertEquals(0, run("sh", "bundles/new-bundle.sh", "pippinry.traits.quince", "Quince traits"));
        assertTrue(names("features/quince.json", "pippinry.bundles:pippinry.traits.quince:@project.version@"));
    }

    @Test
    void aNameThatIsTakenIsRefused() throws Exception {
        assertEquals(2, run("sh", "bundles/new-bundle.sh", "pippinry.model", "Model"));
        assertEquals(2, run("sh", "bundles/new-bundle.sh", "fence", "Fence"));
    }

    private boolean names(String file, String text) throws IOException {
        return Files.readString(copy.resolve(file)).contains(text);
    }

    private static String[] maven(String... args) {
        List<String> fixed = List.of(
                System.getProperty("pippinry.maven") + "/bin/mvn",
                "-B",
                "-o",
                "-q",
                "package",
                "-DskipTests",
                "-Dspotless.check.skip=true",
                "-Dmaven.repo.local=" + System.getProperty("pippinry.repository"));
        return Stream.concat(fixed.stream(), Stream.of(args)).toArray(String[]::new);
    }

    private int run(String... command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command)
                .directory(copy.toFile())
                .redirectErrorStream(true)
                .start();
        process.getOutputStream().close();
        String said = new String(process.getInputStream().readAllBytes());
        int exit = process.waitFor();
        System.out.print(exit == 0 ? "" : said);
        return exit;
    }
}
