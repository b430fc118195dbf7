package pippinry.store.internal.kept;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SealTest {

    @TempDir
    Path temp;

    private Path graph;
    private Path data;
    private Path types;

    @BeforeEach
    void setUp() throws IOException {
        graph = Files.createDirectories(temp.resolve("graph"));
        data = graph.resolve("one.dat");
        types = graph.resolve("types.ptd");
        Files.writeString(data, "first");
        Files.writeString(types, "types");
        Seal seal = seal();
        seal.renew();
        append(data, " second");
        Files.writeString(types, "other types");
        seal.renew();
    }

    @Test
    void whatWasWrittenAfterTheLastSealIsCutOffAndNewFilesGo() throws IOException {
        append(data, " third, and not sealed");
        Files.writeString(graph.resolve("two.dat"), "new");
        seal().restore();
        assertEquals("first second", Files.readString(data));
        assertEquals("other types", Files.readString(types));
        assertFalse(Files.exists(graph.resolve("two.dat")));
        seal().restore();
    }

    @Test
    void whenTheLastSealIsTornTheOneBeforeCounts() throws IOException {
        Files.writeString(types, "types");
        Path file = temp.resolve("seal.txt");
        String text = Files.readString(file);
        Files.writeString(file, text.substring(0, text.length() - 4));
        seal().restore();
        assertEquals("first", Files.readString(data));
    }

    @Test
    void aChangedShortenedOrMissingFileIsNotBelieved() throws IOException {
        byte[] whole = Files.readAllBytes(data);
        for (String other : new String[] {"first sec0nd", "first", ""}) {
            Files.writeString(data, other);
            assertThrows(NotWhole.class, () -> seal().restore());
        }
        Files.delete(data);
        assertThrows(NotWhole.class, () -> seal().restore());
        Files.write(data, whole);
        seal().restore();
        assertArrayEquals("first second".getBytes(StandardCharsets.UTF_8), Files.readAllBytes(data));
    }

    private Seal seal() {
        return new Seal(temp.resolve("seal.txt"), graph);
    }

    private static void append(Path file, String text) throws IOException {
        Files.writeString(file, text, StandardOpenOption.APPEND);
    }
}
