package pippinry.story.internal.check;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.DoubleConsumer;
import pippinry.model.HistoryLine;
import pippinry.model.Program;
import pippinry.model.ProgramStore;
import pippinry.model.Settled;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;

/** Reads a whole program and asks of it everything that must hold. */
public final class Verification {

    private static final List<Check> CHECKS =
            List.of(new Rereading(), new Numbers(), new Ground(), new Dates(), new Counts());
    private static final int AT_ONCE = 20_000;

    private final ProgramStore store;
    private final Program program;
    private final Set<Finding> findings = new LinkedHashSet<>();

    public Verification(ProgramStore store) {
        this.store = store;
        this.program = store.now();
    }

    /** @param progress share of the work that is done */
    public List<Finding> run(DoubleConsumer progress) {
        program.faults().forEach(fault -> findings.add(Finding.of(fault)));
        progress.accept(0.2);
        CHECKS.forEach(check -> check.look(program, findings::add));
        progress.accept(0.4);
        photos();
        history(progress);
        progress.accept(1);
        return List.copyOf(findings);
    }

    private void photos() {
        Path folder = store.folder().resolve("photos");
        program.table(Kinds.PHOTOS).forEach(row -> {
            String file = row.value().file();
            if (!file.isEmpty() && !Files.isRegularFile(folder.resolve(file))) {
                findings.add(Finding.question(
                        "photos", row.value().subject().text(), "file", file, "this photo is not in " + folder));
            }
        });
    }

    /** The history, carried out again from the first edit, must lead to the records as they stand. */
    private void history(DoubleConsumer progress) {
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
                progress.accept(0.4 + 0.5 * line.number() / lines.size());
            }
            before = line;
        }
        for (Kind<?> kind : Kinds.ALL) {
            if (!again.table(kind).rows().equals(program.table(kind).rows())) {
                findings.add(Finding.fault(
                        kind.table(), "", "", "", "the history does not lead to the records as they stand"));
            }
        }
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
        if (Objects.equals(line.author(), "") || line.reason().isEmpty()) {
            findings.add(Finding.fault("history", "edit " + line.number(), "", "", "it has no author or no reason"));
        }
    }
}
