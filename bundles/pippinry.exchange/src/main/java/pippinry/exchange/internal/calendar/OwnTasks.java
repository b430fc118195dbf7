package pippinry.exchange.internal.calendar;

import java.util.Optional;
import java.util.stream.Stream;
import pippinry.model.Program;
import pippinry.model.ask.DueTask;
import pippinry.model.record.Kinds;
import pippinry.model.record.Task;
import pippinry.model.value.PartialDate;

/** Tasks that the person wrote down. */
public final class OwnTasks {

    private static final String OWN = "own";

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
}
