package pippinry.store.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pippinry.store.internal.Programs.assertAlike;
import static pippinry.store.internal.Programs.put;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pippinry.model.Edit;
import pippinry.model.Program;
import pippinry.model.ProgramStore;
import pippinry.model.StoreFailed;
import pippinry.model.record.Kinds;
import pippinry.store.internal.ledger.Ledgers;

class DamagedLedgerTest {

    @TempDir
    Path temp;

    private TestFolder folder;
    private Path file;
    private Path backup;
    private Program second;
    private Program third;

    /** Three edits; the backup has them all, the store folder is gone so that only the ledger tells. */
    @BeforeEach
    void setUp() throws Exception {
        folder = new TestFolder(temp.resolve("larkmoor"));
        file = folder.path.resolve("ledger/000001.jsonl");
        backup = folder.path.resolve("backup/000001.jsonl");
        try (ProgramStore store = folder.create()) {
            put(store, "FIE", "Fiesta");
            put(store, "ELS", "Elstar");
            second = store.now();
            put(store, "GD", "Golden Delicious");
            third = store.now();
        }
        remove("store");
    }

    @Test
    void aTornLastLineIsCutOffWhereverItTore() throws Exception {
        remove("backup");
        byte[] whole = Files.readAllBytes(file);
        int start = lineStart(whole, 4);
        for (int length = start + 1; length < whole.length; length += 7) {
            Files.write(file, Arrays.copyOf(whole, length));
            try (ProgramStore store = folder.open()) {
                assertAlike(second, store.now());
                assertTrue(store.notices().get(0).startsWith("Edit 3 was not finished"), store.notices()::toString);
                put(store, "ELS", "Elstar, again");
            }
            try (ProgramStore store = folder.open()) {
                assertEquals(3, store.now().edit());
                assertEquals(List.of(), store.notices());
            }
            remove("backup");
            remove("store");
        }
    }

    @Test
    void aLastLineFullOfZerosIsTornToo() throws Exception {
        remove("backup");
        byte[] whole = Files.readAllBytes(file);
        Arrays.fill(whole, lineStart(whole, 4) + 20, whole.length, (byte) 0);
        Files.write(file, whole);
        try (ProgramStore store = folder.open()) {
            assertAlike(second, store.now());
        }
    }

    @Test
    void whatTheBackupHasIsNeverCutOff() throws Exception {
        byte[] whole = Files.readAllBytes(file);
        Files.write(file, Arrays.copyOf(whole, whole.length - 5));
        try (ProgramStore store = folder.open()) {
            assertAlike(third, store.now());
            assertTrue(store.notices().get(0).contains("restored from the backup"), store.notices()::toString);
        }
        assertEquals(new String(whole, StandardCharsets.UTF_8), Files.readString(file));
    }

    @Test
    void wholeLinesThatAreGoneAreRestoredFromTheBackup() throws Exception {
        byte[] whole = Files.readAllBytes(file);
        Files.write(file, Arrays.copyOf(whole, lineStart(whole, 3)));
        try (ProgramStore store = folder.open()) {
            assertAlike(third, store.now());
            assertTrue(store.notices().get(0).contains("ended with edit 1"), store.notices()::toString);
        }
    }

    @Test
    void aDamagedMiddleIsNamedAndRestoredFromTheBackup() throws Exception {
        byte[] whole = Files.readAllBytes(file);
        byte[] damaged = whole.clone();
        damaged[lineStart(whole, 3) + 60] ^= 4;
        Files.write(file, damaged);
        try (ProgramStore store = folder.open()) {
            assertAlike(third, store.now());
            assertTrue(store.notices().get(0).contains("damaged in line 3 (edit 2)"), store.notices()::toString);
            put(store, "FIE", "Fiesta, again");
        }
        try (ProgramStore store = folder.open()) {
            assertEquals(4, store.now().edit());
            assertEquals(List.of(), store.notices());
        }
        assertEquals(
                1,
                list("set-aside").stream()
                        .filter(name -> name.startsWith("000001.jsonl"))
                        .count());
    }

    @Test
    void linesNewerThanTheBackupStayWhenAnOlderOneIsRestored() throws Exception {
        byte[] whole = Files.readAllBytes(file);
        Files.write(backup, Arrays.copyOf(whole, lineStart(whole, 4)));
        byte[] damaged = whole.clone();
        damaged[lineStart(whole, 2) + 60] ^= 4;
        Files.write(file, damaged);
        try (ProgramStore store = folder.open()) {
            assertAlike(third, store.now());
        }
    }

    @Test
    void aMissingFileIsRestoredFromTheBackup() throws Exception {
        remove("ledger");
        try (ProgramStore store = folder.open()) {
            assertAlike(third, store.now());
            assertTrue(store.notices().get(0).contains("was missing"), store.notices()::toString);
        }
    }

    @Test
    void aDamagedMiddleWithoutABackupIsRefusedAndNothingTouched() throws Exception {
        remove("backup");
        byte[] damaged = Files.readAllBytes(file);
        damaged[lineStart(damaged, 3) + 60] ^= 4;
        Files.write(file, damaged);
        Map<String, String> before = contents();
        String refused = assertThrows(StoreFailed.class, folder::open).getMessage();
        assertTrue(refused.startsWith("Line 3 of " + file + " is damaged (edit 2)"), refused);
        assertEquals(before, contents());
        try (ProgramStore store = folder.openToRead()) {
            assertEquals(1, store.now().edit());
            assertTrue(store.notices().get(0).contains("as of edit 1"), store.notices()::toString);
        }
    }

    @Test
    void aFolderOfANewerVersionIsRefusedUnharmed() throws Exception {
        Files.write(file, Ledgers.ofFormat(2));
        Map<String, String> before = contents();
        for (String refused : List.of(
                assertThrows(StoreFailed.class, folder::open).getMessage(),
                assertThrows(StoreFailed.class, folder::openToRead).getMessage())) {
            assertTrue(refused.contains("newer version"), refused);
        }
        assertEquals(before, contents());
    }

    @Test
    void anyBitThatIsFlippedIsMendedFromTheBackup() throws Exception {
        Random random = new Random(26);
        for (int round = 0; round < Integer.getInteger("pippinry.flips", 40); round++) {
            byte[] bytes = Files.readAllBytes(file);
            int at = random.nextInt(bytes.length);
            bytes[at] ^= (byte) (1 << random.nextInt(8));
            Files.write(file, bytes);
            try (ProgramStore store = folder.open()) {
                assertAlike(third, store.now());
                assertTrue(store.notices().get(0).contains("restored from the backup"), "byte " + at);
            }
        }
    }

    @Test
    void aLargeEditWithoutItsCommitNeverHappened() throws Exception {
        try (ProgramStore store = folder.open()) {
            Edit.Draft draft = Edit.by("IN", "many");
            for (int i = 0; i < 2_500; i++) {
                draft.put(Kinds.SCORES, Rows.score("FIE", "brix", Integer.toString(i)));
            }
            store.apply(draft.done());
        }
        remove("backup");
        remove("store");
        byte[] whole = Files.readAllBytes(file);
        int begin = lineStart(whole, 5);
        int commit = lineStart(whole, 9);
        assertTrue(new String(whole, commit, 10, StandardCharsets.UTF_8).startsWith("{\"commit\""));
        for (int end :
                new int[] {begin + 30, lineStart(whole, 6), lineStart(whole, 7) + 1000, commit, whole.length - 3}) {
            Files.write(file, Arrays.copyOf(whole, end));
            try (ProgramStore reading = folder.openToRead()) {
                assertAlike(third, reading.now());
                assertEquals(List.of(), reading.notices());
            }
            try (ProgramStore store = folder.open()) {
                assertAlike(third, store.now());
            }
            remove("backup");
            remove("store");
        }
        // A power cut may leave later parts on disk and earlier ones not; no commit is there, so it is torn all the
        // same.
        byte[] holed = Arrays.copyOf(whole, commit);
        Arrays.fill(holed, begin + 10, lineStart(whole, 7) + 5, (byte) 0);
        Files.write(file, holed);
        try (ProgramStore store = folder.open()) {
            assertAlike(third, store.now());
        }
    }

    @Test
    void aPartDamagedBeforeItsCommitIsNoTornEnd() throws Exception {
        try (ProgramStore store = folder.open()) {
            Edit.Draft draft = Edit.by("IN", "many");
            for (int i = 0; i < 2_500; i++) {
                draft.put(Kinds.SCORES, Rows.score("FIE", "brix", Integer.toString(i)));
            }
            store.apply(draft.done());
        }
        remove("backup");
        byte[] damaged = Files.readAllBytes(file);
        damaged[lineStart(damaged, 7) + 500] ^= 1;
        Files.write(file, damaged);
        assertTrue(assertThrows(StoreFailed.class, folder::open).getMessage().startsWith("Line 7 of "));
    }

    @Test
    void aProgramKilledWhileItWasMadeOpensEmpty() throws Exception {
        remove("backup");
        byte[] whole = Files.readAllBytes(file);
        for (int length = 0; length < lineStart(whole, 2); length += 11) {
            Files.write(file, Arrays.copyOf(whole, length));
            try (ProgramStore store = folder.open()) {
                assertEquals(0, store.now().edit());
                put(store, "FIE", "Fiesta");
            }
            remove("backup");
            remove("store");
        }
    }

    /** Offset of a line, counted from 1. */
    private static int lineStart(byte[] bytes, int line) {
        int at = 0;
        for (int i = 1; i < line; i++) {
            while (bytes[at] != '\n') {
                at++;
            }
            at++;
        }
        return at;
    }

    private void remove(String name) throws IOException {
        try (Stream<Path> files = Files.walk(folder.path.resolve(name))) {
            for (Path path : files.sorted(java.util.Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }

    private List<String> list(String name) throws IOException {
        try (Stream<Path> files = Files.list(folder.path.resolve(name))) {
            return files.map(path -> path.getFileName().toString()).toList();
        }
    }

    private Map<String, String> contents() throws IOException {
        Map<String, String> contents = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder.path)) {
            for (Path path : files.filter(Files::isRegularFile).toList()) {
                contents.put(path.toString(), Files.readString(path, StandardCharsets.ISO_8859_1));
            }
        }
        return contents;
    }
}
