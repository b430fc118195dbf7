package pippinry.model.ask;

import java.time.LocalDate;
import java.util.List;
import org.osgi.annotation.versioning.ConsumerType;
import pippinry.model.Program;

/** A module that finds work due. Without it its tasks are missing from the season, and nothing else. */
@ConsumerType
public interface TaskSource {

    /** Tasks due on some day from {@code from} to {@code to}, also those overdue before {@code today}; done ones too. */
    List<DueTask> tasks(Program program, LocalDate today, LocalDate from, LocalDate to);

    /** What this source has to do without for this program and what that means, a sentence each; empty if nothing. */
    default List<String> missing(Program program) {
        return List.of();
    }
}
