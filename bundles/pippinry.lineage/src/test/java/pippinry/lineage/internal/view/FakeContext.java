package pippinry.lineage.internal.view;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import pippinry.model.Edit;
import pippinry.model.Program;
import pippinry.model.ProgramStore;
import pippinry.panels.Palette;
import pippinry.panels.PanelContext;
import pippinry.panels.Progress;

/** A window that works at once and counts what was asked of it. */
final class FakeContext implements PanelContext {

    private final Program program;
    private final Map<String, Integer> works = new HashMap<>();
    private Optional<String> selected = Optional.empty();

    FakeContext(Program program) {
        this.program = program;
    }

    int worked(String what) {
        return works.getOrDefault(what, 0);
    }

    @Override
    public Program program() {
        return program;
    }

    @Override
    public ProgramStore store() {
        throw new UnsupportedOperationException("this panel only looks");
    }

    @Override
    public LocalDate today() {
        return LocalDate.of(2026, 3, 27);
    }

    @Override
    public String author() {
        return "IN";
    }

    @Override
    public Optional<String> selected() {
        return selected;
    }

    @Override
    public void select(String number) {
        selected = Optional.of(number);
    }

    @Override
    public boolean apply(Edit edit) {
        throw new UnsupportedOperationException("this panel only looks");
    }

    @Override
    public <V> void work(String what, Function<Progress, V> work, Consumer<V> show) {
        works.merge(what, 1, Integer::sum);
        show.accept(work.apply((done, at) -> {}));
    }

    @Override
    public Optional<Path> chooseFile(String title, String suggestion) {
        return Optional.empty();
    }

    @Override
    public void say(String text) {
        // Nobody listens.
    }

    @Override
    public void show(String panelId) {
        // There is no other.
    }

    @Override
    public void run(List<String> arguments) {
        throw new UnsupportedOperationException("this panel only looks");
    }

    @Override
    public Palette palette() {
        return Palette.light();
    }
}
