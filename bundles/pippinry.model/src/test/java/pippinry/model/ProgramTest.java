package pippinry.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pippinry.model.record.CellRefused;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;
import pippinry.model.value.Code;

class ProgramTest {

    private static final Instant NOW = Instant.parse("2026-03-27T10:00:00Z");

    @Test
    void anEditMakesANewProgramAndLeavesTheOldAsItWas() throws Exception {
        Program before = Program.empty();
        Program after =
                apply(before, Edit.by("IN", "first").put(Kinds.GENOTYPES, genotype("code", "FIE", "name", "Fiesta")));
        assertEquals(0, before.table(Kinds.GENOTYPES).size());
        assertEquals(
                "Fiesta",
                after.find(Kinds.GENOTYPES, Code.of("FIE")).orElseThrow().name());
        assertEquals(1, after.edit());
    }

    @Test
    void aRowWithTheSameKeyTakesThePlaceOfTheOld() throws Exception {
        Program once = apply(Program.empty(), Edit.by("IN", "first").put(Kinds.GENOTYPES, genotype("code", "FIE")));
        Outcome twice = once.apply(
                Edit.by("IN", "again")
                        .put(Kinds.GENOTYPES, genotype("code", "FIE", "name", "Fiesta"))
                        .done(),
                NOW);
        assertEquals(1, twice.program().table(Kinds.GENOTYPES).size());
        assertEquals(
                Optional.of(genotype("code", "FIE")), twice.changes().get(0).before());
    }

    @Test
    void aReferenceToNothingOnFileIsRefusedWithItsPlace() throws Exception {
        Edit edit = Edit.by("IN", "child")
                .put(Kinds.GENOTYPES, genotype("code", "FIE"))
                .put(Kinds.GENOTYPES, genotype("code", "26-001-001", "seed_parent", "FIE", "pollen_parent", "FIE|ELS"))
                .done();
        EditRefused refused =
                assertThrows(EditRefused.class, () -> Program.empty().apply(edit, NOW));
        assertEquals(
                List.of(new Fault(
                        1,
                        "genotypes",
                        "26-001-001",
                        "pollen_parent",
                        "ELS",
                        "nothing with this code is on file in genotypes")),
                refused.faults());
    }

    @Test
    void referencesWithinOneEditMayStandInAnyOrder() throws Exception {
        Program program = apply(
                Program.empty(),
                Edit.by("IN", "child first")
                        .put(Kinds.GENOTYPES, genotype("code", "26-001-001", "seed_parent", "FIE"))
                        .put(Kinds.GENOTYPES, genotype("code", "FIE")));
        assertEquals(
                List.of("26-001-001"),
                program.table(Kinds.GENOTYPES).citing("FIE").stream()
                        .map(row -> row.value().code().text())
                        .toList());
    }

    @Test
    void aNameWithABlankAfterItIsRefused() throws Exception {
        Edit edit = Edit.by("IN", "goal")
                .put(Kinds.GOALS, row(Kinds.GOALS, "trait", "brix "))
                .done();
        EditRefused refused =
                assertThrows(EditRefused.class, () -> Program.empty().apply(edit, NOW));
        assertEquals("goals brix , trait 'brix ': blanks stand around it", refused.getMessage());
    }

    @Test
    void nobodyDescendsFromItself() throws Exception {
        Edit edit = Edit.by("IN", "loop")
                .put(Kinds.GENOTYPES, genotype("code", "A", "seed_parent", "B"))
                .put(Kinds.GENOTYPES, genotype("code", "B", "pollen_parent", "A"))
                .done();
        EditRefused refused =
                assertThrows(EditRefused.class, () -> Program.empty().apply(edit, NOW));
        assertTrue(refused.faults().stream().allMatch(fault -> fault.reason().equals("it would descend from itself")));
    }

    @Test
    void whatIsStillSpokenOfIsNotTakenOut() throws Exception {
        Program program = apply(
                Program.empty(),
                Edit.by("IN", "child")
                        .put(Kinds.GENOTYPES, genotype("code", "FIE"))
                        .put(Kinds.GENOTYPES, genotype("code", "26-001-001", "seed_parent", "FIE")));
        int fiesta = program.table(Kinds.GENOTYPES).find("FIE").orElseThrow().id();
        EditRefused refused = assertThrows(
                EditRefused.class,
                () -> program.apply(
                        Edit.by("IN", "out").remove(Kinds.GENOTYPES, fiesta).done(), NOW));
        assertEquals(
                "genotypes 26-001-001 still speaks of it",
                refused.faults().get(0).reason());
    }

    @Test
    void aNumberWhoseCheckIsAStarIsRefusedWithASuggestion() {
        String star = firstStar();
        EditRefused refused = assertThrows(EditRefused.class, () -> Program.empty()
                .apply(
                        Edit.by("IN", "star")
                                .put(Kinds.GENOTYPES, genotype("code", star))
                                .done(),
                        NOW));
        assertTrue(refused.getMessage().contains("take " + star + "2 instead"), refused.getMessage());
    }

    @Test
    void reversedChangesBringTheProgramBack() throws Exception {
        Program once = apply(Program.empty(), Edit.by("IN", "first").put(Kinds.GENOTYPES, genotype("code", "FIE")));
        Outcome twice = once.apply(
                Edit.by("IN", "more")
                        .put(Kinds.GENOTYPES, genotype("code", "FIE", "name", "Fiesta"))
                        .put(Kinds.GENOTYPES, genotype("code", "ELS"))
                        .done(),
                NOW);
        List<Settled<?>> back = new java.util.ArrayList<>();
        twice.changes().forEach(change -> back.add(0, change.reversed()));
        Program again = twice.program().with(back, 3, NOW);
        assertEquals(
                once.table(Kinds.GENOTYPES).rows(), again.table(Kinds.GENOTYPES).rows());
        assertEquals(Optional.empty(), again.find(Kinds.GENOTYPES, Code.of("ELS")));
    }

    @Test
    void aKeyThatARowGaveUpInTheSameEditIsFree() throws Exception {
        Program once = apply(Program.empty(), Edit.by("IN", "first").put(Kinds.GENOTYPES, genotype("code", "FIE")));
        Program twice = apply(
                once,
                Edit.by("IN", "renamed")
                        .replace(Kinds.GENOTYPES, 0, genotype("code", "ELS"))
                        .put(Kinds.GENOTYPES, genotype("code", "FIE", "name", "another")));
        assertEquals(1, twice.table(Kinds.GENOTYPES).find("FIE").orElseThrow().id());
        assertEquals(0, twice.table(Kinds.GENOTYPES).find("ELS").orElseThrow().id());
    }

    @Test
    void twoRowsMayChangeKeysWithEachOther() throws Exception {
        Program once = apply(
                Program.empty(),
                Edit.by("IN", "first")
                        .put(Kinds.GENOTYPES, genotype("code", "FIE"))
                        .put(Kinds.GENOTYPES, genotype("code", "ELS")));
        Program twice = apply(
                once,
                Edit.by("IN", "the tags were swapped")
                        .replace(Kinds.GENOTYPES, 0, genotype("code", "ELS"))
                        .replace(Kinds.GENOTYPES, 1, genotype("code", "FIE")));
        assertEquals(1, twice.table(Kinds.GENOTYPES).find("FIE").orElseThrow().id());
        assertEquals(0, twice.table(Kinds.GENOTYPES).find("ELS").orElseThrow().id());
    }

    @Test
    void noRowTakesTheKeyOfAnotherThatKeepsIt() throws Exception {
        Program once = apply(
                Program.empty(),
                Edit.by("IN", "first")
                        .put(Kinds.GENOTYPES, genotype("code", "FIE"))
                        .put(Kinds.GENOTYPES, genotype("code", "ELS")));
        Edit wrong = Edit.by("IN", "renamed")
                .put(Kinds.GENOTYPES, genotype("code", "GD"))
                .replace(Kinds.GENOTYPES, 0, genotype("code", "ELS"))
                .done();
        EditRefused refused = assertThrows(EditRefused.class, () -> once.apply(wrong, NOW));
        assertEquals(
                List.of(new Fault(1, "genotypes", "ELS", "code", "ELS", "this is on file already")), refused.faults());
    }

    @Test
    void anIdIsNeverGivenTwiceThoughItsRowCameAndWentInOneStep() throws Exception {
        Outcome put = Program.empty()
                .apply(
                        Edit.by("IN", "first")
                                .put(Kinds.GENOTYPES, genotype("code", "FIE"))
                                .done(),
                        NOW);
        List<Settled<?>> both = new java.util.ArrayList<>(put.changes());
        both.add(put.changes().get(0).reversed());
        Program again = Program.empty().with(both, 2, NOW);
        assertEquals(0, again.table(Kinds.GENOTYPES).size());
        assertEquals(1, again.table(Kinds.GENOTYPES).nextId());
    }

    @Test
    void whatIsDerivedIsWorkedOutOnce() {
        int[] calls = {0};
        Program program = Program.empty();
        for (int i = 0; i < 3; i++) {
            program.derived(Integer.class, any -> ++calls[0]);
        }
        assertEquals(1, calls[0]);
    }

    private static String firstStar() {
        for (int seedling = 1; ; seedling++) {
            String number = "26-001-%03d".formatted(seedling);
            if (pippinry.model.number.CheckCharacter.of(number) == '*') {
                return number;
            }
        }
    }

    private static Program apply(Program program, Edit.Draft draft) throws EditRefused {
        return program.apply(draft.done(), NOW).program();
    }

    private static Genotype genotype(String... cells) throws IllegalStateException {
        return row(Kinds.GENOTYPES, cells);
    }

    private static <T extends Record> T row(Kind<T> kind, String... cells) {
        Map<String, String> given = new java.util.HashMap<>();
        for (int i = 0; i < cells.length; i += 2) {
            given.put(cells[i], cells[i + 1]);
        }
        try {
            return kind.read(column -> given.getOrDefault(column, ""));
        } catch (CellRefused e) {
            throw new IllegalStateException(e);
        }
    }
}
