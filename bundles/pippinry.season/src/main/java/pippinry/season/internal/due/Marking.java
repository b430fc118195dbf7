package pippinry.season.internal.due;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import pippinry.model.Edit;
import pippinry.model.Program;
import pippinry.model.record.Kinds;
import pippinry.model.record.Outcome;
import pippinry.model.record.Task;
import pippinry.model.value.PartialDate;

/** Marks a task of the list as done or skipped. */
public final class Marking {

    private Marking() {}

    /**
     * The open task that is meant.
     *
     * @param wanted {@code RULE:BATCH}, with {@code @DUE} where several are due
     * @throws IllegalArgumentException if none or several are meant; the message names those there are
     */
    public static Entry find(DueList list, String wanted) {
        List<Entry> meant = list.open().stream()
                .filter(entry -> entry.mark().equals(wanted)
                        || (entry.task().rule() + ":" + entry.task().batch()).equals(wanted))
                .toList();
        if (meant.size() != 1) {
            String what = meant.isEmpty() ? "No open task is '" : "Several open tasks are '";
            List<Entry> shown = meant.isEmpty() ? list.open() : meant;
            throw new IllegalArgumentException(what + wanted + "'; there are: "
                    + shown.stream().map(Entry::mark).collect(Collectors.joining(", ")));
        }
        return meant.get(0);
    }

    public static Edit edit(Program program, Entry entry, Outcome outcome, LocalDate day, String author) {
        String reason = entry.task().text() + ": " + outcome.word();
        Edit.Draft edit = Edit.by(author, reason);
        Task marked = marked(entry, outcome, day, author);
        return entry.ownRow().isPresent()
                ? edit.replace(Kinds.TASKS, entry.ownRow().getAsInt(), own(program, entry, marked))
                        .done()
                : edit.put(Kinds.TASKS, marked).done();
    }

    private static Task marked(Entry entry, Outcome outcome, LocalDate day, String author) {
        return new Task(
                entry.task().batch(),
                Optional.of(PartialDate.of(entry.task().due())),
                entry.task().text(),
                entry.task().rule(),
                Optional.of(outcome),
                Optional.of(PartialDate.of(day)),
                author);
    }

    /** The person's own words and date stay as they were. */
    private static Task own(Program program, Entry entry, Task marked) {
        Task own = program.table(Kinds.TASKS).get(entry.ownRow().getAsInt()).orElseThrow();
        return new Task(own.batch(), own.date(), own.text(), "", marked.outcome(), marked.doneOn(), marked.person());
    }
}
