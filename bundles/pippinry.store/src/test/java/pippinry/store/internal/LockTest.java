package pippinry.store.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pippinry.store.internal.Programs.put;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pippinry.model.ProgramStore;
import pippinry.model.StoreFailed;

/** Two processes and one program. */
class LockTest {

    @TempDir
    Path temp;

    private TestFolder folder;

    @BeforeEach
    void setUp() {
        folder = new TestFolder(temp.resolve("larkmoor"));
    }

    @Test
    void whoIsRefusedIsToldWhoHasItAndGetsItWhenThatOneIsKilled() throws Exception {
        Process other = start();
        try {
            assertEquals(EditsWithoutEnd.OPEN, firstLine(other));
            String refused = assertThrows(StoreFailed.class, folder::open).getMessage();
            assertTrue(refused.contains("process " + other.pid() + " of "), refused);
            try (ProgramStore reading = folder.openToRead()) {
                assertTrue(reading.readOnly());
            }
        } finally {
            other.destroyForcibly().waitFor();
        }
        assertTrue(Files.exists(folder.path.resolve("lock")));
        try (ProgramStore store = folder.open()) {
            put(store, "FIE", "Fiesta");
        }
    }

    /** On many systems a closed channel takes every lock of its process on the file with it. */
    @Test
    void aRefusedOpenerInTheSameProcessDoesNotLoosenTheLock() throws Exception {
        try (ProgramStore store = folder.create()) {
            assertThrows(StoreFailed.class, folder::open);
            assertThrows(StoreFailed.class, folder::open);
            Process other = start();
            assertEquals(null, firstLine(other));
            assertTrue(other.waitFor() != 0);
            put(store, "FIE", "Fiesta");
        }
        assertFalse(Files.exists(folder.path.resolve("lock-holder.txt")));
    }

    private Process start() throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        EditsWithoutEnd.class.getName(),
                        folder.path.toString(),
                        "1")
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    private static String firstLine(Process process) throws IOException {
        // Left open: closing it would end the process on its next line.
        return new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8)).readLine();
    }
}
