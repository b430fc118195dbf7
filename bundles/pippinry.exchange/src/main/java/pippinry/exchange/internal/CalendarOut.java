package pippinry.exchange.internal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.CallRefused;
import pippinry.exchange.internal.calendar.OwnTasks;
import pippinry.exchange.internal.calendar.SeasonCalendar;
import pippinry.model.HistoryLine;
import pippinry.model.Program;
import pippinry.model.ProgramStore;
import pippinry.model.ask.DueTask;
import pippinry.model.ask.TaskMarks;
import pippinry.model.ask.TaskSource;

/**
 * What is due, as an iCalendar.
 *
 * @param weeks how far ahead
 */
record CalendarOut(List<TaskSource> sources, int weeks) implements Outgoing {

    @Override
    public Answer write(Call call, ProgramStore store, Program program, Destination out)
            throws IOException, CallRefused {
        Path file = out.file("season.ics");
        LocalDate today = today(call, program);
        LocalDate last = today.plusWeeks(weeks);
        // Whole years: a task's UID counts those before it in its year.
        LocalDate first = today.withDayOfYear(1);
        List<DueTask> tasks = Stream.concat(
                        sources.stream().flatMap(source -> source.tasks(program, today, first, last).stream()),
                        OwnTasks.of(program))
                .filter(task -> !task.due().isAfter(last))
                .toList();
        SeasonCalendar calendar = new SeasonCalendar(identity(store), program.time(), program.edit());
        Set<DueTask> marked = TaskMarks.of(program).assign(tasks).keySet();
        String text = calendar.of(tasks, today, marked::contains);
        Destination.write(file, part -> Files.writeString(part, text, StandardCharsets.UTF_8));
        long events = text.lines().filter("BEGIN:VEVENT"::equals).count();
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("file", file.toString());
        json.put("from", today.toString());
        json.put("to", last.toString());
        json.put("events", events);
        String none = sources.isEmpty() ? " No module that finds work due is there, only your own tasks." : "";
        return Answer.of(json, events + " tasks up to " + last + " are in " + file + "." + none);
    }

    /** The demo has a today of its own; a day that the person named comes before it. */
    private static LocalDate today(Call call, Program program) {
        LocalDate today = call.today();
        boolean named = !today.equals(LocalDate.now(call.clock()));
        return named ? today : program.setting("today").map(LocalDate::parse).orElse(today);
    }

    /** The moment of its first edit tells a program from others, wherever its folder goes. */
    private static String identity(ProgramStore store) {
        return store.history().stream()
                .findFirst()
                .map(HistoryLine::time)
                .map(Object::toString)
                .orElse("");
    }
}
