package pippinry.season.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pippinry.model.Edit;
import pippinry.model.EditRefused;
import pippinry.model.Program;
import pippinry.model.ask.DueTask;
import pippinry.model.ask.TaskSource;
import pippinry.model.record.CellRefused;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;
import pippinry.season.internal.due.DueList;
import pippinry.season.internal.walk.DaySheet;
import pippinry.season.internal.walk.Walk;

class WalkTest {

    private static final LocalDate TODAY = LocalDate.parse("2026-05-20");

    @Test
    void theWayGoesUpOneRowAndDownTheNext() throws Exception {
        Walk walk = Walk.of(ground(), DaySheet.ofDay(list("P11", "P110", "P12", "P29", "P22", "P31")));
        assertEquals(
                List.of(
                        "A row 1 place 1",
                        "A row 1 place 2",
                        "A row 1 place 10",
                        "A row 2 place 9",
                        "A row 2 place 2",
                        "B row 1 place 1"),
                walk.stops().stream().map(Walk.Stop::place).toList());
    }

    @Test
    void aLimbIsFoundAtItsHostAndABranchAtItsTree() throws Exception {
        Walk walk = Walk.of(ground(), DaySheet.ofDay(list("LIMB", "26-001/1")));
        assertEquals(
                List.of("A row 1 place 1", "A row 1 place 1"),
                walk.stops().stream().map(Walk.Stop::place).toList());
    }

    @Test
    void aGenotypeIsFoundWhereverItLives() throws Exception {
        Walk walk = Walk.of(ground(), DaySheet.ofDay(list("FIE")));
        assertEquals(6, walk.stops().size());
    }

    @Test
    void whatStandsNowhereIsDoneAtHome() throws Exception {
        Walk walk = Walk.of(ground(), DaySheet.ofDay(list("POT")));
        assertEquals(0, walk.stops().size());
        assertEquals(1, walk.atHome().size());
    }

    @Test
    void aRowShowsOnlyItsOwnWork() throws Exception {
        Walk walk = Walk.of(ground(), DaySheet.ofDay(list("P11", "P29", "POT"))).in("A", Optional.of("2"));
        assertEquals(
                List.of("P29"), walk.stops().stream().map(Walk.Stop::number).toList());
        assertEquals(0, walk.atHome().size());
    }

    private static DueList list(String... subjects) {
        DueTask task = new DueTask("26-001", "look", TODAY, TODAY, "Look", "", Optional.empty(), List.of(subjects));
        TaskSource source = (program, today, from, to) -> List.of(task);
        return DueList.of(Program.empty(), List.of(source), TODAY, TODAY);
    }

    private static Program ground() throws EditRefused, CellRefused {
        Edit.Draft edit = Edit.by("IN", "test");
        put(edit, Kinds.GENOTYPES, Map.of("code", "FIE"));
        put(edit, Kinds.BLOCKS, Map.of("block", "A"));
        put(edit, Kinds.BLOCKS, Map.of("block", "B"));
        for (String[] at : new String[][] {
            {"P11", "A", "1", "1"}, {"P12", "A", "1", "2"}, {"P110", "A", "1", "10"},
            {"P22", "A", "2", "2"}, {"P29", "A", "2", "9"}, {"P31", "B", "1", "1"}
        }) {
            put(edit, Kinds.PLANTS, Map.of("tag", at[0], "genotype", "FIE"));
            put(edit, Kinds.PLACES, Map.of("plant", at[0], "block", at[1], "row", at[2], "place", at[3]));
        }
        put(edit, Kinds.PLANTS, Map.of("tag", "POT"));
        put(edit, Kinds.PLANTS, Map.of("tag", "LIMB", "kind", "limb", "host", "P11"));
        put(edit, Kinds.POLLINATIONS, Map.of("tag", "26-001/1", "plant", "P11"));
        return Program.empty().apply(edit.done(), Instant.EPOCH).program();
    }

    private static <T extends Record> void put(Edit.Draft edit, Kind<T> kind, Map<String, String> cells)
            throws CellRefused {
        edit.put(kind, kind.read(column -> cells.getOrDefault(column, "")));
    }
}
