package pippinry.story.internal.check;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleConsumer;
import pippinry.model.HistoryLine;
import pippinry.model.Program;
import pippinry.model.ProgramStore;
import pippinry.model.Settled;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;

/** The history, carried out again from the first edit, must lead to the records as they stand. */
final class Past {

    private static final int AT_ONCE = 20_000;

    private final ProgramStore store;
    private final List<Finding> findings = new ArrayList<>();

    Past(ProgramStore store) {
        this.store = store;
    }

    List<Finding> look(DoubleConsumer progress) {
        Program again = Program.empty();
        List<HistoryLine> lines = store.history();
        List<Settled<?>> waiting = new ArrayList<>();
        HistoryLine before = null;
        for (HistoryLine line : lines) {
            order(before, line);
            waiting.addAll(store.changesOf(line.number()));
            if (waiting.size() >= AT_ONCE || line.number() == lines.size()) {
                again = again.with(waiting, line.number(), line.time());
                waiting.clear();
                progress.accept(0.9 * line.number() / lines.size());
            }
            before = line;
        }
        for (Kind<?> kind : Kinds.ALL) {
            if (!again.table(kind).rows().equals(store.now().table(kind).rows())) {
                findings.add(Finding.fault(
                        kind.table(), "", "", "", "the history does not lead to the records as they stand"));
            }
        }
        return findings;
    }

    private void order(HistoryLine before, HistoryLine line) {
        long number = before == null ? 1 : before.number() + 1;
        if (line.number() != number) {
            findings.add(Finding.fault(
                    "history", "edit " + line.number(), "", "", "edit " + number + " is missing before it"));
        }
        if (before != null && line.time().isBefore(before.time())) {
            findings.add(Finding.fault(
                    "history", "edit " + line.number(), "time", line.time(), "the edit before it was made later"));
        }
        if (line.author().isEmpty() || line.reason().isEmpty()) {
            findings.add(Finding.fault("history", "edit " + line.number(), "", "", "it has no author or no reason"));
        }
    }
}
