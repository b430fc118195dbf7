package pippinry.story.internal.check;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.function.DoubleConsumer;
import pippinry.model.Program;
import pippinry.model.ProgramStore;
import pippinry.model.record.Kinds;

/** Reads a whole program and asks of it everything that must hold. */
public final class Verification {

    private static final List<Check> CHECKS =
            List.of(new Rereading(), new Numbers(), new Ground(), new Dates(), new Counts());

    private final ProgramStore store;
    private final Program program;
    private final Set<Finding> findings = new LinkedHashSet<>();

    public Verification(ProgramStore store) {
        this.store = store;
        this.program = store.now();
    }

    /**
     * Reads the history in a thread of its own: a program never changes, so both read it at once.
     *
     * @param progress share of the work that is done
     */
    public List<Finding> run(DoubleConsumer progress) {
        CompletableFuture<List<Finding>> past = CompletableFuture.supplyAsync(() -> new Past(store).look(progress));
        program.faults().forEach(fault -> findings.add(Finding.of(fault)));
        CHECKS.forEach(check -> check.look(program, findings::add));
        photos();
        findings.addAll(past.join());
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
}
