package pippinry.store.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pippinry.store.internal.Programs.assertAlike;
import static pippinry.store.internal.Programs.name;
import static pippinry.store.internal.Programs.put;
import static pippinry.store.internal.Rows.genotype;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pippinry.model.Edit;
import pippinry.model.EditRefused;
import pippinry.model.HistoryLine;
import pippinry.model.Program;
import pippinry.model.ProgramStore;
import pippinry.model.StoreFailed;
import pippinry.model.number.CheckCharacter;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;

class LedgerStoreTest {

    @TempDir
    Path temp;

    private TestFolder folder;

    @BeforeEach
    void setUp() {
        folder = new TestFolder(temp.resolve("larkmoor"));
    }

    @Test
    void whatWasPutIsThereAfterReopening() throws Exception {
        Program before;
        try (ProgramStore store = folder.create()) {
            put(store, "FIE", "Fiesta");
            put(store, "ELS", "Elstar");
            before = store.now();
        }
        try (ProgramStore store = folder.open()) {
            assertAlike(before, store.now());
            assertEquals(List.of(), store.notices());
            assertEquals(2, store.history().size());
        }
    }

    @Test
    void anEditOfManyThousandRecordsIsReadToItsEnd() throws Exception {
        Edit.Draft many = Edit.by("IN", "many");
        for (int i = 0; i < 25_000; i++) {
            many.put(Kinds.GENOTYPES, genotype("G" + i + "/", ""));
        }
        try (ProgramStore store = folder.create()) {
            put(store, "FIE", "Fiesta");
            store.apply(Edit.by("IN", "out").remove(Kinds.GENOTYPES, 0).done());
            store.apply(leaveOutStars(many.done()));
        }
        try (ProgramStore store = folder.openToRead()) {
            long all = store.changesOf(3).size();
            assertEquals(all, store.now().table(Kinds.GENOTYPES).size());
            assertEquals(3, store.now().edit());
        }
    }

    private static Edit leaveOutStars(Edit edit) {
        return new Edit(
                edit.author(),
                edit.reason(),
                edit.changes().stream()
                        .filter(change ->
                                CheckCharacter.of(((Genotype) change.after().orElseThrow())
                                                .code()
                                                .text())
                                        != CheckCharacter.STAR)
                        .toList());
    }

    @Test
    void timeNeverRunsBackwards() throws Exception {
        try (ProgramStore store = folder.create()) {
            HistoryLine first = put(store, "FIE", "Fiesta");
            folder.pass(Duration.ofHours(-3));
            assertEquals(first.time(), put(store, "ELS", "Elstar").time());
        }
    }

    @Test
    void aSecondOpenerIsToldWhoHasIt() throws Exception {
        try (ProgramStore store = folder.create()) {
            put(store, "FIE", "Fiesta");
            String refused = assertThrows(StoreFailed.class, folder::open).getMessage();
            assertTrue(refused.contains("process " + ProcessHandle.current().pid()), refused);
            try (ProgramStore reading = folder.openToRead()) {
                assertTrue(reading.readOnly());
                assertAlike(store.now(), reading.now());
                assertThrows(StoreFailed.class, () -> put(reading, "ELS", "Elstar"));
            }
        }
        folder.open().close();
    }

    @Test
    void aLargeEditIsOnePieceAndIsReadInParts() throws Exception {
        Program before;
        try (ProgramStore store = folder.create()) {
            Edit.Draft draft = Edit.by("IN", "many");
            for (int i = 0; i < 2_500; i++) {
                draft.put(Kinds.GENOTYPES, genotype("G_" + i, "number " + i));
            }
            HistoryLine line = store.apply(draft.done());
            assertEquals(2_500, line.records());
            assertEquals(2_500, store.changesOf(line.number()).size());
            before = store.now();
        }
        try (ProgramStore store = folder.openToRead()) {
            assertAlike(before, store.now());
        }
    }

    @Test
    void eachEditIsAnnouncedOnceItIsOnFile() throws Exception {
        List<Long> heard = new ArrayList<>();
        folder.announced = (edit, changes) -> heard.add(edit.number());
        try (ProgramStore store = folder.create()) {
            put(store, "FIE", "Fiesta");
            assertThrows(EditRefused.class, () -> child(store, "26-001-001", "no", "NOBODY"));
            store.undo("IN");
        }
        assertEquals(List.of(1L, 2L), heard);
    }

    @Test
    void whoCannotBeToldOfAnEditDoesNotMakeItFail() throws Exception {
        folder.announced = (edit, changes) -> {
            throw new IllegalStateException("the bus has stopped");
        };
        try (ProgramStore store = folder.create()) {
            assertEquals(1, put(store, "FIE", "Fiesta").number());
            assertEquals(1, store.now().edit());
            assertTrue(store.notices().get(0).contains("the bus has stopped"));
        }
    }

    @Test
    void anInterruptedThreadWritesItsEditAllTheSame() throws Exception {
        try (ProgramStore store = folder.create()) {
            Thread.currentThread().interrupt();
            put(store, "FIE", "Fiesta");
            assertTrue(Thread.interrupted());
            put(store, "ELS", "Elstar");
        }
        try (ProgramStore store = folder.open()) {
            assertEquals(2, store.now().edit());
            assertEquals(List.of(), store.notices());
        }
    }

    @Test
    void halfACharacterIsRefusedAndNothingWritten() throws Exception {
        try (ProgramStore store = folder.create()) {
            EditRefused refused = assertThrows(EditRefused.class, () -> put(store, "FIE", "Fies\ud83cta"));
            assertEquals("name", refused.faults().get(0).column());
            assertEquals("FIE", refused.faults().get(0).key());
            assertEquals(1, put(store, "FIE", "Fiesta 🍎 \u2028\n\"").number());
        }
        try (ProgramStore store = folder.openToRead()) {
            assertEquals("Fiesta 🍎 \u2028\n\"", name(store.now(), "FIE"));
        }
    }

    @Test
    void anOldSnapshotReadsTheSameAfterTenThousandEdits() throws Exception {
        try (ProgramStore store = folder.create()) {
            put(store, "FIE", "Fiesta");
            store.apply(Edit.by("IN", "score")
                    .put(Kinds.SCORES, Rows.score("FIE", "brix", "12.5"))
                    .done());
            Program old = store.now();
            List<?> before = List.of(
                    old.table(Kinds.GENOTYPES).rows(), old.table(Kinds.SCORES).rows());
            for (int i = 0; i < 10_000; i++) {
                store.apply(Edit.by("IN", "edit")
                        .put(Kinds.GENOTYPES, genotype(i % 3 == 0 ? "FIE" : "G_" + i % 700, "name " + i))
                        .replace(Kinds.SCORES, 0, Rows.score("FIE", "brix", "1" + i % 10))
                        .put(Kinds.SCORES, Rows.score("FIE", "acid", Integer.toString(i)))
                        .done());
            }
            assertEquals(10_002, store.now().edit());
            assertEquals(
                    before,
                    List.of(
                            old.table(Kinds.GENOTYPES).rows(),
                            old.table(Kinds.SCORES).rows()));
            assertEquals("Fiesta", name(old, "FIE"));
            assertEquals(1, old.table(Kinds.SCORES).citing("FIE").size());
        }
    }

    @Test
    void theFirstEditOfADayBringsTheBackupUp() throws Exception {
        try (ProgramStore store = folder.create()) {
            put(store, "FIE", "Fiesta");
            put(store, "ELS", "Elstar");
            folder.pass(Duration.ofDays(1));
            put(store, "GD", "Golden Delicious");
            Path backup = folder.path.resolve("backup/000001.jsonl");
            Path ledger = folder.path.resolve("ledger/000001.jsonl");
            for (int patience = 0; patience < 200 && !sameLength(backup, ledger); patience++) {
                Thread.sleep(20);
            }
            assertEquals(-1, Files.mismatch(backup, ledger));
        }
    }

    private static boolean sameLength(Path backup, Path ledger) throws IOException {
        return Files.exists(backup) && Files.size(backup) == Files.size(ledger);
    }

    @Test
    void aReadOnlyFolderIsRefusedWithWhatToDo() throws Exception {
        Assumptions.assumeFalse("root".equals(System.getProperty("user.name")), "root may write everywhere");
        folder.create().close();
        folder.path.toFile().setWritable(false);
        folder.path.resolve("lock").toFile().setWritable(false);
        try {
            String refused = assertThrows(StoreFailed.class, folder::open).getMessage();
            assertTrue(refused.contains("the right to write"), refused);
            folder.openToRead().close();
        } finally {
            folder.path.toFile().setWritable(true);
        }
    }

    @Test
    void aMissingFolderIsNamed() {
        String refused = assertThrows(StoreFailed.class, folder::open).getMessage();
        assertTrue(refused.contains(folder.path.toString()), refused);
    }

    @Test
    void aClosedProgramTakesNoMoreEdits() throws Exception {
        ProgramStore store = folder.create();
        put(store, "FIE", "Fiesta");
        store.close();
        store.close();
        assertThrows(StoreFailed.class, () -> put(store, "ELS", "Elstar"));
        assertEquals("Fiesta", name(store.now(), "FIE"));
    }

    @Test
    void whatIsStillOpenIsClosedWhenTheBundleStops() throws Exception {
        ProgramFoldersOnDisk folders = new ProgramFoldersOnDisk();
        ProgramStore store = folders.create(folder.path, folder);
        ProgramStore closed = folders.create(temp.resolve("other"), folder);
        closed.close();
        put(store, "FIE", "Fiesta");
        folders.close();
        assertThrows(StoreFailed.class, () -> put(store, "ELS", "Elstar"));
        try (ProgramStore again = folder.open()) {
            assertEquals(1, again.now().edit());
        }
    }

    @Test
    void aFolderWithAnythingInItIsNotTakenForANewProgram() throws Exception {
        folder.create().close();
        assertTrue(assertThrows(StoreFailed.class, folder::create).getMessage().contains("is not empty"));
        assertFalse(new ProgramFoldersOnDisk().isProgram(temp));
        assertTrue(assertThrows(StoreFailed.class, new TestFolder(temp)::open)
                .getMessage()
                .contains("no program"));
    }

    private static HistoryLine child(ProgramStore store, String code, String name, String parent) throws EditRefused {
        return store.apply(Edit.by("IN", code)
                .put(Kinds.GENOTYPES, Rows.row(Kinds.GENOTYPES, "code", code, "name", name, "seed_parent", parent))
                .done());
    }
}
