package pippinry.store.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pippinry.store.internal.Programs.assertAlike;
import static pippinry.store.internal.Programs.name;
import static pippinry.store.internal.Programs.put;
import static pippinry.store.internal.Rows.genotype;

import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pippinry.model.Edit;
import pippinry.model.EditRefused;
import pippinry.model.Program;
import pippinry.model.ProgramStore;
import pippinry.model.record.Kinds;

class TakingBackTest {

    @TempDir
    Path temp;

    private TestFolder folder;

    @BeforeEach
    void setUp() {
        folder = new TestFolder(temp.resolve("larkmoor"));
    }

    @Test
    void undoAndRedoGoBackAndForthAndStayOnRecord() throws Exception {
        try (ProgramStore store = folder.create()) {
            put(store, "FIE", "Fiesta");
            put(store, "FIE", "Fiesta, the second tree");
            put(store, "ELS", "Elstar");
            assertEquals(3, store.undoable().orElseThrow().number());
            assertEquals(3, store.undo("IN").takesBack().getAsLong());
            assertEquals(2, store.undo("IN").takesBack().getAsLong());
            assertEquals("Fiesta", name(store.now(), "FIE"));
            assertEquals(2, store.redoable().orElseThrow().number());
            assertEquals("brought again: FIE", store.redo("IN").reason());
            assertEquals("Fiesta, the second tree", name(store.now(), "FIE"));
            assertEquals(3, store.redoable().orElseThrow().number());
            store.redo("IN");
            assertEquals(Optional.empty(), store.redoable());
            assertEquals("Elstar", name(store.now(), "ELS"));
            assertEquals(3, store.undoable().orElseThrow().number());
            store.undo("IN");
            put(store, "GD", "Golden Delicious");
            assertEquals(Optional.empty(), store.redoable());
            assertThrows(EditRefused.class, () -> store.redo("IN"));
            assertEquals(9, store.history().size());
            assertEquals(8, store.history().get(2).takenBackBy().getAsLong());
            assertTrue(store.history().get(1).takenBackBy().isEmpty());
        }
    }

    @Test
    void undoStopsAtTheFirstEdit() throws Exception {
        try (ProgramStore store = folder.create()) {
            put(store, "FIE", "Fiesta");
            store.undo("IN");
            assertEquals(Optional.empty(), store.undoable());
            assertEquals(
                    "there is no edit to take back",
                    assertThrows(EditRefused.class, () -> store.undo("IN"))
                            .faults()
                            .get(0)
                            .reason());
        }
    }

    @Test
    void whatDoesNotChangeIsNotOnRecordAndNotTakenBack() throws Exception {
        try (ProgramStore store = folder.create()) {
            put(store, "FIE", "Fiesta");
            assertEquals(0, put(store, "FIE", "Fiesta").records());
            assertEquals(List.of(), store.changesOf(2));
            assertEquals(1, store.undoable().orElseThrow().number());
            store.undo("IN");
            assertEquals(0, store.now().table(Kinds.GENOTYPES).size());
        }
    }

    @Test
    void anOlderEditIsTakenBackUnlessLaterOnesChangedItsRecords() throws Exception {
        try (ProgramStore store = folder.create()) {
            put(store, "FIE", "Fiesta");
            put(store, "ELS", "Elstar");
            put(store, "FIE", "Fiesta, the second tree");
            EditRefused refused = assertThrows(EditRefused.class, () -> store.takeBack(1, "IN"));
            assertEquals(
                    "genotypes FIE: edit 3 (IN: FIE) changed it since; take that back first", refused.getMessage());
            store.takeBack(2, "IN");
            assertTrue(store.now().table(Kinds.GENOTYPES).find("ELS").isEmpty());
            assertThrows(EditRefused.class, () -> store.takeBack(2, "IN"));
            store.takeBack(3, "IN");
            store.takeBack(1, "IN");
            assertEquals(0, store.now().table(Kinds.GENOTYPES).size());
        }
    }

    @Test
    void theProgramCanBeSeenAsOfAnyDay() throws Exception {
        try (ProgramStore store = folder.create()) {
            put(store, "FIE", "Fiesta");
            folder.pass(Duration.ofDays(2));
            put(store, "FIE", "Fiesta, the second tree");
            put(store, "ELS", "Elstar");
            folder.pass(Duration.ofDays(2));
            store.undo("IN");
            LocalDate first = LocalDate.of(2026, 3, 27);
            assertEquals(
                    0, store.asOf(first.minusDays(1)).table(Kinds.GENOTYPES).size());
            assertEquals("Fiesta", name(store.asOf(first), "FIE"));
            assertEquals("Fiesta", name(store.asOf(first.plusDays(1)), "FIE"));
            assertEquals(2, store.asOf(first.plusDays(2)).table(Kinds.GENOTYPES).size());
            assertEquals(3, store.asOf(first.plusDays(3)).edit());
            assertAlike(store.now(), store.asOf(first.plusDays(400)));
        }
    }

    @Test
    void anEditThatTakesBackALargeOneAndTheDayBeforeIt() throws Exception {
        try (ProgramStore store = folder.create()) {
            put(store, "FIE", "Fiesta");
            folder.pass(Duration.ofDays(1));
            Edit.Draft draft = Edit.by("IN", "many");
            for (int i = 0; i < 3_100; i++) {
                draft.put(Kinds.SCORES, Rows.score("FIE", "brix", Integer.toString(i % 100)));
            }
            // The same row in two parts of the ledger: only from the last back does it come to what it was.
            draft.put(Kinds.GENOTYPES, genotype("FIE", "Fiesta, again"));
            draft.put(Kinds.GENOTYPES, genotype("ELS", "Elstar"));
            for (int i = 0; i < 1_500; i++) {
                draft.put(Kinds.SCORES, Rows.score("FIE", "acid", Integer.toString(i % 100)));
            }
            draft.put(Kinds.GENOTYPES, genotype("FIE", "Fiesta, once more"));
            store.apply(draft.done());
            Program full = store.now();
            assertEquals("Fiesta", name(store.asOf(LocalDate.of(2026, 3, 27)), "FIE"));
            store.undo("IN");
            assertEquals("Fiesta", name(store.now(), "FIE"));
            assertEquals(0, store.now().table(Kinds.SCORES).size());
            store.redo("IN");
            assertEquals(
                    full.table(Kinds.SCORES).rows(),
                    store.now().table(Kinds.SCORES).rows());
            assertEquals(4, store.history().size());
        }
    }
}
