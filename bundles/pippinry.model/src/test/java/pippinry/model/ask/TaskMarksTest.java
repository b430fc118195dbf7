package pippinry.model.ask;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pippinry.model.Edit;
import pippinry.model.Program;
import pippinry.model.record.Kinds;
import pippinry.model.record.Outcome;
import pippinry.model.record.Task;
import pippinry.model.value.PartialDate;

class TaskMarksTest {

    private static final DueTask FIRST_LOOK = look("2026-03-01");
    private static final DueTask NEXT_LOOK = look("2026-03-08");

    @Test
    void aMarkCountsForTheTaskOfItsDayAndLeavesTheNextWeeksOpen() throws Exception {
        assertEquals(Map.of(NEXT_LOOK, Outcome.DONE), marks("2026-03-08").assign(List.of(FIRST_LOOK, NEXT_LOOK)));
    }

    @Test
    void aTaskWhoseDayHasMovedKeepsItsMark() throws Exception {
        assertEquals(Map.of(FIRST_LOOK, Outcome.DONE), marks("2026-03-05").assign(List.of(FIRST_LOOK)));
    }

    @Test
    void aMarkFarAwayCountsForNothing() throws Exception {
        assertEquals(Map.of(), marks("2026-03-12").assign(List.of(FIRST_LOOK)));
    }

    private static DueTask look(String day) {
        LocalDate date = LocalDate.parse(day);
        return new DueTask("L25-018", "look", date, date.plusDays(7), "Open the lot", "", Optional.empty());
    }

    private static TaskMarks marks(String day) throws Exception {
        Task mark = new Task(
                "L25-018",
                Optional.of(PartialDate.parse(day)),
                "",
                "look",
                Optional.of(Outcome.DONE),
                Optional.empty(),
                "IN");
        return TaskMarks.of(Program.empty()
                .apply(Edit.by("IN", "mark").put(Kinds.TASKS, mark).done(), Instant.EPOCH)
                .program());
    }
}
