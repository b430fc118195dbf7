package pippinry.workbench.internal.view;

import java.io.File;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.JFileChooser;
import javax.swing.JFrame;
import javax.swing.JOptionPane;
import pippinry.model.Edit;
import pippinry.model.EditRefused;
import pippinry.model.ProgramStore;
import pippinry.model.StoreFailed;
import pippinry.panels.Palette;
import pippinry.panels.Progress;
import pippinry.workbench.internal.Session;

/** What panels use of the window. */
final class WindowContext extends SessionContext {

    /** A change of the open program. */
    interface Changing {
        Object on(ProgramStore store) throws EditRefused;
    }

    private final JFrame frame;
    private final StatusLine status;
    private final WorkbenchWindow window;
    private final Palette palette;

    WindowContext(Session session, JFrame frame, StatusLine status, WorkbenchWindow window, Palette palette) {
        super(session);
        this.frame = frame;
        this.status = status;
        this.window = window;
        this.palette = palette;
    }

    @Override
    public void select(String number) {
        window.select(number);
    }

    @Override
    public boolean apply(Edit edit) {
        return change(store -> store.apply(edit));
    }

    boolean change(Changing changing) {
        if (session.lookingBack().isPresent()) {
            tell("You are looking back to " + session.lookingBack().get() + ". Come back to today to change anything.");
            return false;
        }
        try {
            changing.on(session.store());
            window.refresh();
            return true;
        } catch (EditRefused | StoreFailed e) {
            tell(e.getMessage());
            return false;
        }
    }

    @Override
    public <V> void work(String what, Function<Progress, V> work, Consumer<V> show) {
        Consumer<V> shown = value -> {
            show.accept(value);
            window.retitle();
        };
        status.work(what, work, shown, failure -> tell(what + " did not work: " + failure.getMessage()));
    }

    @Override
    public Optional<Path> chooseFile(String title, String suggestion) {
        JFileChooser chooser = new JFileChooser();
        chooser.setDialogTitle(title);
        chooser.setSelectedFile(new File(suggestion));
        boolean chosen = chooser.showSaveDialog(frame) == JFileChooser.APPROVE_OPTION;
        return chosen ? Optional.of(chooser.getSelectedFile().toPath()) : Optional.empty();
    }

    @Override
    public void say(String text) {
        status.say(text);
    }

    @Override
    public void show(String panelId) {
        window.show(panelId);
    }

    @Override
    public void run(List<String> arguments) {
        work(arguments.get(0), progress -> session.run(arguments), status::say);
    }

    @Override
    public Palette palette() {
        return palette;
    }

    /** Looks at the program as it stood at the end of a day, or comes back to now. */
    void lookBack(Optional<LocalDate> day) {
        session.lookBack(day);
        window.refresh();
    }

    private void tell(String message) {
        JOptionPane.showMessageDialog(frame, message, "Pippinry", JOptionPane.WARNING_MESSAGE);
    }
}
