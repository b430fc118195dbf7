package pippinry.labels.internal.wanted;

import java.time.LocalDate;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import pippinry.model.Edit;
import pippinry.model.Program;
import pippinry.model.record.Kinds;
import pippinry.model.record.Outcome;
import pippinry.model.record.Task;
import pippinry.model.value.PartialDate;

/** Whose tag was printed: it stands on file as a task done, one for each time. */
public final class PrintedTags {
    /** The rule of the task that says so. */
    public static final String RULE = "tag";

    private final Set<String> numbers;

    private PrintedTags(Set<String> numbers) {
        this.numbers = numbers;
    }

    public static PrintedTags of(Program program) {
        return program.derived(PrintedTags.class, PrintedTags::read);
    }

    private static PrintedTags read(Program program) {
        Set<String> numbers = new HashSet<>();
        program.table(Kinds.TASKS).stream()
                .filter(task -> task.rule().equals(RULE) && task.outcome().equals(Optional.of(Outcome.DONE)))
                .forEach(task -> numbers.add(task.batch()));
        return new PrintedTags(numbers);
    }

    public boolean has(String number) {
        return numbers.contains(number);
    }

    /** Notes that tags for these numbers were printed. */
    public void note(Collection<String> printed, TagKind kind, LocalDate day, String person, Edit.Draft edit) {
        PartialDate date = PartialDate.of(day);
        for (String number : new LinkedHashSet<>(printed)) {
            String text = (has(number) ? "Tag printed again for " : "Tag printed for ") + kind.word();
            edit.put(
                    Kinds.TASKS,
                    new Task(
                            number,
                            Optional.of(date),
                            text,
                            RULE,
                            Optional.of(Outcome.DONE),
                            Optional.of(date),
                            person));
        }
    }
}
