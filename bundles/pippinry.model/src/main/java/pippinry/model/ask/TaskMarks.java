package pippinry.model.ask;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pippinry.model.Program;
import pippinry.model.record.Kinds;
import pippinry.model.record.Outcome;
import pippinry.model.record.Task;
import pippinry.model.value.PartialDate;

/**
 * Which tasks that modules find were marked as done or skipped. A mark counts for the task of its batch and rule that was due
 * on its day; where a date has moved since, as bloom dates do, for the nearest one within ten days, and once only.
 */
public final class TaskMarks {

    private static final int NEAR_DAYS = 10;

    private final Map<String, List<Task>> marks = new HashMap<>();

    private TaskMarks() {}

    public static TaskMarks of(Program program) {
        TaskMarks marks = new TaskMarks();
        program.table(Kinds.TASKS).stream()
                .filter(task -> !task.rule().isBlank() && task.outcome().isPresent())
                .forEach(task -> marks.marks
                        .computeIfAbsent(key(task.rule(), task.batch()), any -> new ArrayList<>())
                        .add(task));
        return marks;
    }

    /** What became of each task, all those of a list taken together; those that nobody marked are not in it. Ask once. */
    public Map<DueTask, Outcome> assign(List<DueTask> tasks) {
        Map<DueTask, Outcome> outcomes = new HashMap<>();
        // Marks of the very day first, so that a neighbour does not take them.
        for (int reach : new int[] {0, NEAR_DAYS}) {
            tasks.stream().filter(task -> !outcomes.containsKey(task)).forEach(task -> take(task, reach)
                    .ifPresent(outcome -> outcomes.put(task, outcome)));
        }
        return outcomes;
    }

    private Optional<Outcome> take(DueTask task, int reach) {
        List<Task> some = marks.getOrDefault(key(task.rule(), task.batch()), List.of());
        Optional<Task> nearest = some.stream()
                .filter(mark -> distance(mark, task) <= reach)
                .min(Comparator.comparingLong(mark -> distance(mark, task)));
        nearest.ifPresent(some::remove);
        return nearest.flatMap(Task::outcome);
    }

    private static long distance(Task mark, DueTask task) {
        LocalDate day = mark.date().or(mark::doneOn).map(PartialDate::latest).orElse(LocalDate.MIN);
        return Math.abs(ChronoUnit.DAYS.between(day, task.due()));
    }

    private static String key(String rule, String batch) {
        return rule + "\n" + batch;
    }
}
