package pippinry.panels;

import java.util.List;
import javax.swing.JComponent;

/** An open panel. All calls come on the event dispatch thread. */
public interface Panel extends AutoCloseable {

    /** What is shown; the same component at every call. */
    JComponent view();

    /** What the person can do here; also found by Ctrl+K. */
    List<PanelAction> actions();

    /** The program changed, or another was opened: show it anew. */
    void refresh();

    /** Leaves nothing behind that keeps the panel's classes alive. */
    @Override
    void close();
}
