package pippinry.story.internal.number;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import pippinry.model.ask.DueTask;
import pippinry.model.ask.TaskMarks;
import pippinry.model.ask.TaskSource;

/** Finds the work of the next weeks that a story's number has part in. */
public final class DueWork {

    private static final int WEEKS = 4;

    private final List<TaskSource> sources;

    public DueWork(List<TaskSource> sources) {
        this.sources = List.copyOf(sources);
    }

    public List<DueTask> about(Story story, LocalDate today) {
        List<DueTask> tasks = sources.stream()
                .flatMap(source -> source.tasks(story.program(), today, today, today.plusWeeks(WEEKS)).stream())
                .filter(task -> story.family().contains(task.batch()))
                .toList();
        Set<DueTask> marked = TaskMarks.of(story.program()).assign(tasks).keySet();
        return tasks.stream().filter(task -> !marked.contains(task)).toList();
    }
}
