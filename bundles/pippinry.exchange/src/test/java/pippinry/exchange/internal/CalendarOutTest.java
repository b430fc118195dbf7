package pippinry.exchange.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pippinry.model.Edit;
import pippinry.model.ask.DueTask;
import pippinry.model.ask.TaskSource;
import pippinry.model.record.Kinds;
import pippinry.model.record.Outcome;
import pippinry.model.record.Task;
import pippinry.model.value.PartialDate;

class CalendarOutTest {

    @TempDir
    private Path files;

    private static DueTask look(String day) {
        LocalDate due = LocalDate.parse(day);
        return new DueTask("L25-018", "look", due, due.plusDays(6), "Look on " + day, "", Optional.empty());
    }

    @Test
    void aTaskMarkedAsDoneLeavesTheCalendarAndItsNeighbourStays() throws Exception {
        MemoryStore.Folders folders = new MemoryStore.Folders();
        Task done = new Task(
                "L25-018",
                Optional.of(PartialDate.parse("2026-04-01")),
                "",
                "look",
                Optional.of(Outcome.DONE),
                Optional.empty(),
                "IN");
        Path program = files.resolve("larkmoor");
        folders.create(program, Clock.systemUTC())
                .apply(Edit.by("IN", "looked").put(Kinds.TASKS, done).done());
        TaskSource source = (any, today, from, to) -> List.of(look("2026-04-01"), look("2026-04-08"));
        Path file = files.resolve("season.ics");
        assertTrue(new CallInTest(folders)
                .run(new ExportProgram(List.of(source)), program, file, "--calendar")
                .yes());
        String calendar = Files.readString(file);
        assertFalse(calendar.contains("Look on 2026-04-01"), calendar);
        assertTrue(calendar.contains("Look on 2026-04-08"), calendar);
        assertEquals(1, calendar.split("BEGIN:VEVENT", -1).length - 1);
    }
}
