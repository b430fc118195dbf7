package pippinry.demo;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SameBytesTest {

    @Test
    void theGeneratorMakesTheCommittedFiles(@TempDir Path fresh) throws IOException {
        new Larkmoor().write(fresh);
        for (String part : List.of("larkmoor", "truth")) {
            List<String> made = files(fresh.resolve(part));
            assertEquals(files(Files.DEMO.resolve(part)), made);
            for (String file : made) {
                assertArrayEquals(
                        java.nio.file.Files.readAllBytes(
                                Files.DEMO.resolve(part).resolve(file)),
                        java.nio.file.Files.readAllBytes(fresh.resolve(part).resolve(file)),
                        () -> part + "/" + file + ": run the generator again and commit what it makes");
            }
        }
    }

    private static List<String> files(Path folder) throws IOException {
        try (Stream<Path> files = java.nio.file.Files.walk(folder)) {
            return files.filter(java.nio.file.Files::isRegularFile)
                    .map(file -> folder.relativize(file).toString())
                    .sorted()
                    .toList();
        }
    }
}
