package pippinry.exchange.internal.calendar;

import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.stream.Stream;
import pippinry.model.Program;
import pippinry.model.ask.DueTask;
import pippinry.model.record.Kinds;
import pippinry.model.record.Task;
import pippinry.model.value.PartialDate;

/** Tasks that the person wrote down, and the marks on those that modules found. */
public final class OwnTasks {

    private static final String OWN = "own";
    private static final int NEAR_DAYS = 10;

    private OwnTasks() {}

    /** Those with a day that are neither done nor skipped. */
    public static Stream<DueTask> of(Program program) {
        return program.table(Kinds.TASKS).stream()
                .filter(task -> task.rule().isBlank() && task.outcome().isEmpty())
                .flatMap(task -> task.date().stream().map(date -> due(task, date)));
    }

    private static DueTask due(Task task, PartialDate date) {
        return new DueTask(
                task.batch(), OWN, date.earliest(), date.latest(), task.text(), task.person(), Optional.empty());
    }

    /** Dates that hang on bloom move a little after a task was marked as done, so a mark nearby counts. */
    public static boolean isMarked(Program program, DueTask due) {
        return program.table(Kinds.TASKS).stream()
                .filter(mark -> mark.rule().equals(due.rule()) && mark.batch().equals(due.batch()))
                .filter(mark -> mark.outcome().isPresent())
                .flatMap(mark -> mark.date().or(mark::doneOn).stream())
                .anyMatch(day -> Math.abs(ChronoUnit.DAYS.between(day.latest(), due.due())) <= NEAR_DAYS);
    }
}
