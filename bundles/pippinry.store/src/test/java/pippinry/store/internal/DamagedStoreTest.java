package pippinry.store.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pippinry.store.internal.Programs.assertAlike;
import static pippinry.store.internal.Programs.put;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pippinry.model.Edit;
import pippinry.model.Program;
import pippinry.model.ProgramStore;
import pippinry.model.record.Kinds;

/** Whatever becomes of the store folder, the program is read whole from the ledger, and the person is told. */
class DamagedStoreTest {

    @TempDir
    Path temp;

    private TestFolder folder;
    private Program expected;

    @BeforeEach
    void setUp() throws Exception {
        folder = new TestFolder(temp.resolve("larkmoor"));
        try (ProgramStore store = folder.create()) {
            put(store, "FIE", "Fiesta");
            put(store, "ELS", "Elstar");
            Edit.Draft draft = Edit.by("IN", "scores");
            for (int i = 0; i < 2_000; i++) {
                draft.put(Kinds.SCORES, Rows.score(i % 3 == 0 ? "FIE" : "ELS", "brix", "1" + i % 9 + "." + i % 10));
            }
            store.apply(draft.done());
            store.undo("IN");
            store.redo("IN");
            expected = store.now();
        }
    }

    @Test
    void aWholeStoreIsUsed() {
        assertOpens(0);
    }

    @Test
    void aStoreThatIsGoneIsMadeAgain() throws IOException {
        remove(folder.path.resolve("store"));
        assertOpens(1);
        assertOpens(0);
    }

    @Test
    void anEmptyStoreFolderIsMadeAgain() throws IOException {
        remove(folder.path.resolve("store"));
        Files.createDirectories(folder.path.resolve("store"));
        assertOpens(1);
        assertOpens(0);
    }

    @Test
    void aStoreOfAnotherProgramIsSetAside() throws Exception {
        TestFolder other = new TestFolder(temp.resolve("other"));
        try (ProgramStore store = other.create()) {
            put(store, "GD", "Golden Delicious");
        }
        remove(folder.path.resolve("store"));
        Files.move(other.path.resolve("store"), folder.path.resolve("store"));
        assertOpens(1);
        assertOpens(0);
    }

    @Test
    void aStoreThatKnowsMoreThanTheLedgerIsKeptAndTold() throws Exception {
        TestFolder longer = new TestFolder(temp.resolve("longer"));
        try (ProgramStore store = longer.create()) {
            for (int i = 0; i < 9; i++) {
                put(store, "GD", "Golden Delicious " + i);
            }
        }
        remove(folder.path.resolve("store"));
        Files.move(longer.path.resolve("store"), folder.path.resolve("store"));
        try (ProgramStore store = folder.open()) {
            assertAlike(expected, store.now());
            assertTrue(store.notices().get(0).contains("it knew edits up to 9"), store.notices()::toString);
        }
    }

    @Test
    void aTruncatedStoreIsMadeAgain() throws IOException {
        for (Path file : files()) {
            long length = Files.size(file);
            for (long left : new long[] {0, 1, length / 2, length - 1}) {
                try (RandomAccessFile open = new RandomAccessFile(file.toFile(), "rw")) {
                    open.setLength(Math.min(left, length));
                }
                assertOpensWithAtMostOneNotice("truncated " + file + " to " + left);
                assertOpens(0);
            }
        }
    }

    @Test
    void flippedBitsAreNeverBelieved() throws IOException {
        Random random = new Random(26);
        for (int round = 0; round < Integer.getInteger("pippinry.flips", 12); round++) {
            List<Path> files = files();
            Path file = files.get(random.nextInt(files.size()));
            byte[] bytes = Files.readAllBytes(file);
            if (bytes.length > 0) {
                int at = random.nextInt(bytes.length);
                bytes[at] ^= (byte) (1 << random.nextInt(8));
                Files.write(file, bytes);
                assertOpensWithAtMostOneNotice("flipped byte " + at + " of " + file);
            }
        }
    }

    private void assertOpens(int notices) {
        try (ProgramStore store = folder.open()) {
            assertEquals(notices, store.notices().size(), store.notices()::toString);
            assertAlike(expected, store.now());
        }
    }

    /** A bit that no reader looks at does no harm. */
    private void assertOpensWithAtMostOneNotice(String what) {
        try (ProgramStore store = folder.open()) {
            assertTrue(store.notices().size() <= 1, () -> what + ": " + store.notices());
            assertAlike(expected, store.now());
        }
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> files = Files.walk(folder.path.resolve("store"))) {
            return files.filter(Files::isRegularFile).sorted().toList();
        }
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path path : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
