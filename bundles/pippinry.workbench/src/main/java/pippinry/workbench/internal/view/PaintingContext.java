package pippinry.workbench.internal.view;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import pippinry.model.Edit;
import pippinry.model.Program;
import pippinry.model.ProgramStore;
import pippinry.panels.Palette;
import pippinry.panels.PanelContext;
import pippinry.panels.Progress;
import pippinry.workbench.internal.Session;

/** Surrounds a panel that is only painted: nothing can be changed, and work is done at once. */
final class PaintingContext implements PanelContext {

    private final Session session;
    private final Palette palette;

    PaintingContext(Session session, Palette palette) {
        this.session = session;
        this.palette = palette;
    }

    @Override
    public Program program() {
        return session.program();
    }

    @Override
    public ProgramStore store() {
        return session.store();
    }

    @Override
    public LocalDate today() {
        return session.today();
    }

    @Override
    public String author() {
        return session.author();
    }

    @Override
    public Optional<String> selected() {
        return session.selection().number();
    }

    @Override
    public void select(String number) {
        session.selection().select(number);
    }

    @Override
    public boolean apply(Edit edit) {
        return false;
    }

    @Override
    public <V> void work(String what, Function<Progress, V> work, Consumer<V> show) {
        show.accept(work.apply((done, at) -> {}));
    }

    @Override
    public Optional<Path> chooseFile(String title, String suggestion) {
        return Optional.empty();
    }

    @Override
    public void say(String text) {
        // Nobody is there to read it.
    }

    @Override
    public void show(String panelId) {
        // There is one panel only.
    }

    @Override
    public void run(List<String> arguments) {
        // A painted panel starts no work of its own.
    }

    @Override
    public Palette palette() {
        return palette;
    }
}
