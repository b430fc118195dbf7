package pippinry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The zip that is carried to another machine. */
class ZipIT {

    private static final Path ZIP = Path.of(System.getProperty("pippinry.zip"));

    @TempDir
    Path folder;

    @Test
    void whatIsUnpackedRuns() throws Exception {
        Path script = unpacked().resolve("bin/pippinry");
        CalledProgram.Answer answer =
                CalledProgram.of(script, "number", "26-014-073").answer();
        assertEquals("26-014-073=Y", answer.out().strip(), answer.err());
    }

    @Test
    void nothingInItBelongsToThisMachine() throws IOException {
        try (ZipFile zip = new ZipFile(ZIP.toFile())) {
            List<String> names = zip.stream().map(ZipEntry::getName).toList();
            assertTrue(names.stream().noneMatch(name -> name.endsWith(".jsa") || name.endsWith("/BUILT")));
        }
    }

    private Path unpacked() throws IOException {
        try (ZipFile zip = new ZipFile(ZIP.toFile())) {
            for (ZipEntry entry :
                    zip.stream().filter(entry -> !entry.isDirectory()).toList()) {
                Path to = folder.resolve(entry.getName());
                Files.createDirectories(to.getParent());
                Files.copy(zip.getInputStream(entry), to);
            }
        }
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.findFirst().orElseThrow();
        }
    }
}
