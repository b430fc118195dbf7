package pippinry.story.internal.number;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import pippinry.model.ask.DueTask;
import pippinry.model.ask.TaskSource;
import pippinry.model.record.Kinds;

/** Finds the work of the next weeks that a story's number has part in. */
public final class DueWork {

    private static final int WEEKS = 4;
    private static final int NEAR_DAYS = 10;

    private final List<TaskSource> sources;

    public DueWork(List<TaskSource> sources) {
        this.sources = List.copyOf(sources);
    }

    public List<DueTask> about(Story story, LocalDate today) {
        return sources.stream()
                .flatMap(source -> source.tasks(story.program(), today, today, today.plusWeeks(WEEKS)).stream())
                .filter(task -> story.family().contains(task.batch()) && !isMarked(story, task))
                .toList();
    }

    /** Dates that hang on bloom move a little after a task was marked as done, so a mark nearby counts. */
    private static boolean isMarked(Story story, DueTask task) {
        return story.records(Kinds.TASKS).stream()
                .filter(mark -> mark.rule().equals(task.rule()) && mark.batch().equals(task.batch()))
                .filter(mark -> mark.outcome().isPresent())
                .flatMap(mark -> mark.date().or(mark::doneOn).stream())
                .anyMatch(day -> Math.abs(ChronoUnit.DAYS.between(day.latest(), task.due())) <= NEAR_DAYS);
    }
}
