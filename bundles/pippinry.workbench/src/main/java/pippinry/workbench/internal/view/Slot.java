package pippinry.workbench.internal.view;

import io.github.andrewauclair.moderndocking.Dockable;
import io.github.andrewauclair.moderndocking.app.Docking;
import java.awt.BorderLayout;
import java.util.Optional;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import pippinry.panels.Panel;

/**
 * A permanent place for a panel, and the only thing that the docking library ever sees: so a saved desk can name a panel
 * whose bundle is absent, and the library holds on to no class of a module.
 */
final class Slot extends JPanel implements Dockable {

    private static final long serialVersionUID = 1;

    private final String id;
    private final String title;
    private transient Optional<Panel> panel = Optional.empty();
    private boolean stale;

    Slot(String id, String title) {
        super(new BorderLayout());
        this.id = id;
        this.title = title;
        Docking.registerDockable(this);
    }

    boolean isFilled() {
        return panel.isPresent();
    }

    Optional<Panel> panel() {
        return panel;
    }

    void fill(Panel opened) {
        panel = Optional.of(opened);
        add(opened.view(), BorderLayout.CENTER);
        stale = false;
        revalidate();
        repaint();
    }

    /** Lets go of the panel, if there is one. */
    void empty() {
        panel.ifPresent(Panel::close);
        panel = Optional.empty();
        removeAll();
        revalidate();
        repaint();
    }

    /** Shows the program anew, now if the slot is to be seen, else when it is. */
    void refresh() {
        if (isShowing()) {
            stale = false;
            panel.ifPresent(Panel::refresh);
        } else {
            stale = true;
        }
    }

    @Override
    public void addNotify() {
        super.addNotify();
        SwingUtilities.invokeLater(this::refreshIfStale);
    }

    private void refreshIfStale() {
        if (stale) {
            refresh();
        }
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (panel != null) {
            SwingUtilities.invokeLater(this::refresh);
        }
    }

    @Override
    public String getPersistentID() {
        return id;
    }

    @Override
    public String getTabText() {
        return title;
    }

    @Override
    public boolean isWrappableInScrollpane() {
        return false;
    }

    @Override
    public boolean isFloatingAllowed() {
        return true;
    }

    @Override
    public boolean isAutoHideAllowed() {
        return false;
    }

    @Override
    public boolean isMinMaxAllowed() {
        return true;
    }
}
