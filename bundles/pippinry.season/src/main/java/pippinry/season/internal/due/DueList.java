package pippinry.season.internal.due;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import pippinry.model.Program;
import pippinry.model.Row;
import pippinry.model.ask.DueTask;
import pippinry.model.ask.TaskMarks;
import pippinry.model.ask.TaskSource;
import pippinry.model.record.Kinds;
import pippinry.model.record.Outcome;
import pippinry.model.record.Task;
import pippinry.model.value.PartialDate;

/**
 * What is due up to a day, oldest first, then by batch: what the modules find and what the person wrote down.
 *
 * @param entries also those that are done or skipped
 * @param missing what there was to do without, in words
 */
public record DueList(LocalDate today, LocalDate to, List<Entry> entries, List<String> missing) {

    /** Rule of a task that the person wrote down. */
    public static final String OWN = "own";

    private static final Comparator<DueTask> OLDEST_FIRST =
            Comparator.comparing(DueTask::due).thenComparing(DueTask::batch).thenComparing(DueTask::rule);

    public static DueList of(Program program, List<TaskSource> sources, LocalDate today, LocalDate to) {
        List<DueTask> tasks = sources.stream()
                .flatMap(source -> source.tasks(program, today, today, to).stream())
                .sorted(OLDEST_FIRST)
                .toList();
        Map<DueTask, Outcome> outcomes = TaskMarks.of(program).assign(tasks);
        List<Entry> entries = new ArrayList<>();
        tasks.forEach(task -> entries.add(
                new Entry(task, status(Optional.ofNullable(outcomes.get(task)), task, today), OptionalInt.empty())));
        program.table(Kinds.TASKS).forEach(row -> own(row, today, to).ifPresent(entries::add));
        entries.sort(Comparator.comparing(Entry::task, OLDEST_FIRST));
        return new DueList(today, to, entries, missing(program, sources));
    }

    public List<Entry> open() {
        return entries.stream().filter(entry -> entry.status().isOpen()).toList();
    }

    public List<Entry> with(Status status) {
        return entries.stream().filter(entry -> entry.status() == status).toList();
    }

    /** What is still to come and begins on these days. */
    public List<Entry> coming(LocalDate from, LocalDate before) {
        return with(Status.COMING).stream()
                .filter(entry ->
                        !entry.task().due().isBefore(from) && entry.task().due().isBefore(before))
                .toList();
    }

    private static Optional<Entry> own(Row<Task> row, LocalDate today, LocalDate to) {
        Task own = row.value();
        if (!own.rule().isBlank()) {
            return Optional.empty();
        }
        DueTask task = new DueTask(
                own.batch(),
                OWN,
                own.date().map(PartialDate::earliest).orElse(today),
                own.date().map(PartialDate::latest).orElse(today),
                own.text(),
                own.person(),
                Optional.empty());
        return task.due().isAfter(to)
                ? Optional.empty()
                : Optional.of(new Entry(task, status(own.outcome(), task, today), OptionalInt.of(row.id())));
    }

    private static Status status(Optional<Outcome> outcome, DueTask task, LocalDate today) {
        if (outcome.isPresent()) {
            return outcome.get() == Outcome.DONE ? Status.DONE : Status.SKIPPED;
        }
        if (task.until().isBefore(today)) {
            return Status.OVERDUE;
        }
        return task.due().isAfter(today) ? Status.COMING : Status.DUE;
    }

    private static List<String> missing(Program program, List<TaskSource> sources) {
        return sources.isEmpty()
                ? List.of("No module that finds work is there: only tasks of your own are listed")
                : sources.stream()
                        .flatMap(source -> source.missing(program).stream())
                        .distinct()
                        .toList();
    }
}
