package pippinry.model.ask;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Something that a module finds due.
 *
 * @param batch which cross, lot, plant or block it is for, as on its tag
 * @param rule which rule found it; with batch and {@code due} it marks the task when it is done or skipped
 * @param due first day on which it should be done
 * @param until last day on which it still helps
 * @param text what to do, a plain sentence
 * @param detail how many, where, why then
 * @param caution one line where the work can hurt someone; empty if it cannot
 * @param subjects numbers of the branches, plants or lots to go to, so that a day's way can be laid; empty if it is done at
 *     the desk
 */
public record DueTask(
        String batch,
        String rule,
        LocalDate due,
        LocalDate until,
        String text,
        String detail,
        Optional<String> caution,
        List<String> subjects) {

    public DueTask {
        subjects = List.copyOf(subjects);
    }

    /** Work at the desk. */
    public DueTask(
            String batch,
            String rule,
            LocalDate due,
            LocalDate until,
            String text,
            String detail,
            Optional<String> caution) {
        this(batch, rule, due, until, text, detail, caution, List.of());
    }
}
