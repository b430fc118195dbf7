package pippinry.panels;

import java.util.List;
import javax.swing.JComponent;

/** An open panel. All calls come on the event dispatch thread. */
public interface Panel extends AutoCloseable {

    /** What is shown; the same component at every call. */
    JComponent view();

    /** What the person can do here; also found by Ctrl+K. */
    List<PanelAction> actions();

    /** A few quiet words beside the title, such as the weeks shown; read again after each refresh and each work. */
    default String subtitle() {
        return "";
    }

    /** The program changed, or another was opened: show it anew. */
    void refresh();

    /** Another number was selected somewhere: mark it if it is shown here. */
    default void mark(String number) {}

    /** Leaves nothing behind that keeps the panel's classes alive. */
    @Override
    void close();
}
