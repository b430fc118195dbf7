package pippinry.workbench.internal.view;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import pippinry.model.Edit;
import pippinry.panels.Palette;
import pippinry.panels.Progress;
import pippinry.workbench.internal.Session;

/** Surrounds a panel that is only painted: nothing can be changed, and work is done at once. */
final class PaintingContext extends SessionContext {

    private final Palette palette;

    PaintingContext(Session session, Palette palette) {
        super(session);
        this.palette = palette;
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
