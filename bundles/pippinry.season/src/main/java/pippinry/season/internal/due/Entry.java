package pippinry.season.internal.due;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.OptionalInt;
import pippinry.model.ask.DueTask;

/**
 * A task as it stands in the list of a day.
 *
 * @param ownRow the row of the person's own task; empty for one that a module found
 */
public record Entry(DueTask task, Status status, OptionalInt ownRow) {

    /** Days since the last useful day; 0 while it is not past, or when it is done. */
    public long overdueDays(LocalDate today) {
        return status == Status.OVERDUE ? ChronoUnit.DAYS.between(task.until(), today) : 0;
    }

    /** Under which it is marked as done, such as {@code sow:L25-018@2026-03-15}. */
    public String mark() {
        return task.rule() + ":" + task.batch() + "@" + task.due();
    }
}
