package pippinry.season.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pippinry.model.Edit;
import pippinry.model.EditRefused;
import pippinry.model.Program;
import pippinry.model.ask.DueTask;
import pippinry.model.ask.TaskSource;
import pippinry.model.record.Kinds;
import pippinry.model.record.Outcome;
import pippinry.model.record.Task;
import pippinry.model.value.PartialDate;
import pippinry.season.internal.due.DueList;
import pippinry.season.internal.due.Entry;
import pippinry.season.internal.due.Group;
import pippinry.season.internal.due.Listing;
import pippinry.season.internal.due.Marking;
import pippinry.season.internal.due.Status;

class DueListTest {

    private static final LocalDate TODAY = LocalDate.parse("2026-03-27");

    @Test
    void oldestComesFirstThenByBatch() {
        DueList list = list(Program.empty(), task("B", "2026-03-20"), task("A", "2026-03-20"), task("C", "2026-03-01"));
        assertEquals(
                List.of("C", "A", "B"),
                list.entries().stream().map(entry -> entry.task().batch()).toList());
    }

    @Test
    void aTaskIsOverdueOnlyAfterItsLastUsefulDay() {
        DueTask lasting = new DueTask("A", "sow", TODAY.minusDays(9), TODAY, "Sow", "", Optional.empty());
        DueTask late = new DueTask("B", "sow", TODAY.minusDays(9), TODAY.minusDays(2), "Sow", "", Optional.empty());
        List<Entry> entries = list(Program.empty(), lasting, late).entries();
        assertEquals(
                List.of(Status.DUE, Status.OVERDUE),
                entries.stream().map(Entry::status).toList());
        assertEquals(
                List.of(0L, 2L),
                entries.stream().map(entry -> entry.overdueDays(TODAY)).toList());
    }

    @Test
    void aMarkCountsForTheTaskOfItsDayAndOnceOnly() throws EditRefused {
        Program program = with(mark("A", "look", "2026-03-20", Outcome.DONE));
        DueList list = list(
                program,
                named("A", "look", "2026-03-12"),
                named("A", "look", "2026-03-20"),
                named("A", "look", "2026-03-27"));
        assertEquals(
                List.of(Status.DUE, Status.DONE, Status.DUE),
                list.entries().stream().map(Entry::status).toList());
    }

    @Test
    void aMarkFollowsATaskWhoseDayHasMoved() throws EditRefused {
        Program program = with(mark("A", "pollinate", "2026-03-17", Outcome.SKIPPED));
        assertEquals(
                Status.SKIPPED,
                list(program, named("A", "pollinate", "2026-03-22"))
                        .entries()
                        .get(0)
                        .status());
    }

    @Test
    void aTaskOfOnesOwnStandsBesideTheOthersAndKeepsItsWordsWhenItIsDone() throws EditRefused {
        Program program = with(new Task(
                "PAR",
                Optional.of(PartialDate.parse("2026-03-25")),
                "tie in the cordons",
                "",
                Optional.empty(),
                Optional.empty(),
                ""));
        Entry own = list(program).entries().get(0);
        assertEquals(Status.OVERDUE, own.status());
        Edit edit = Marking.edit(program, own, Outcome.DONE, TODAY, "IN");
        Program after = program.apply(edit, Instant.EPOCH).program();
        assertEquals(1, after.table(Kinds.TASKS).size());
        assertEquals(Status.DONE, list(after).entries().get(0).status());
        assertEquals("tie in the cordons", list(after).entries().get(0).task().text());
    }

    @Test
    void whatIsMarkedDoneIsNotListedAsOpen() throws EditRefused {
        DueList before = list(Program.empty(), task("A", "2026-03-20"));
        Edit edit = Marking.edit(Program.empty(), Marking.find(before, "sow:A"), Outcome.DONE, TODAY, "IN");
        Program after = Program.empty().apply(edit, Instant.EPOCH).program();
        assertEquals(List.of(), list(after, task("A", "2026-03-20")).open());
    }

    @Test
    void anUnclearMarkNamesWhatThereIs() {
        DueList list = list(Program.empty(), task("A", "2026-03-20"), task("A", "2026-04-10"));
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> Marking.find(list, "sow:A"));
        assertTrue(refused.getMessage().contains("sow:A@2026-04-10"), refused.getMessage());
        assertEquals(
                "2026-04-10",
                Marking.find(list, "sow:A@2026-04-10").task().due().toString());
    }

    @Test
    void everyOpenTaskStandsInOneGroup() {
        DueList list = list(
                Program.empty(),
                new DueTask("A", "sow", TODAY.minusDays(9), TODAY.minusDays(2), "", "", Optional.empty()),
                new DueTask("B", "sow", TODAY, TODAY, "", "", Optional.empty()),
                task("C", "2026-04-03"),
                task("D", "2026-04-24"));
        assertEquals(
                List.of("Overdue", "To do now", "From 3 April", "From 24 April"),
                Group.of(list).stream().map(Group::title).toList());
    }

    @Test
    void withoutAnyModuleTheListSaysSo() {
        DueList list = DueList.of(Program.empty(), List.of(), TODAY, TODAY.plusWeeks(4));
        assertTrue(Listing.words(list).contains("No module that finds work"));
    }

    private static DueList list(Program program, DueTask... tasks) {
        TaskSource source = (any, today, from, to) -> List.of(tasks);
        return DueList.of(program, List.of(source), TODAY, TODAY.plusWeeks(4));
    }

    private static DueTask task(String batch, String due) {
        return named(batch, "sow", due);
    }

    private static DueTask named(String batch, String rule, String due) {
        LocalDate day = LocalDate.parse(due);
        return new DueTask(batch, rule, day, day.plusDays(30), "Sow " + batch, "", Optional.empty());
    }

    private static Task mark(String batch, String rule, String due, Outcome outcome) {
        return new Task(
                batch, Optional.of(PartialDate.parse(due)), "", rule, Optional.of(outcome), Optional.empty(), "IN");
    }

    private static Program with(Task task) throws EditRefused {
        return Program.empty()
                .apply(Edit.by("IN", "test").put(Kinds.TASKS, task).done(), Instant.EPOCH)
                .program();
    }
}
