package pippinry.workbench.internal.view;

import io.github.andrewauclair.moderndocking.Dockable;
import io.github.andrewauclair.moderndocking.DockableTabPreference;
import io.github.andrewauclair.moderndocking.app.Docking;
import io.github.andrewauclair.moderndocking.ui.DockingHeaderUI;
import io.github.andrewauclair.moderndocking.ui.HeaderController;
import io.github.andrewauclair.moderndocking.ui.HeaderModel;
import java.awt.BorderLayout;
import java.awt.event.HierarchyEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import pippinry.panels.Palette;
import pippinry.panels.Panel;
import pippinry.panels.PanelAction;

/**
 * A permanent place for a panel, and the only thing that the docking library ever sees: so a saved desk can name a panel
 * whose bundle is absent, and the library holds on to no class of a module.
 */
final class Slot extends JPanel implements Dockable {

    private static final long serialVersionUID = 1;

    private final String id;
    private final String title;
    private final Palette palette;
    private final CardTail tail;
    private final transient Supplier<Optional<Panel>> opener;
    private transient Optional<Panel> panel = Optional.empty();
    private transient Runnable retitled = () -> {};
    private boolean stale;

    /** @param opener opens the panel when it is looked at for the first time; empty while its bundle is away */
    Slot(String id, String title, Palette palette, Supplier<Optional<Panel>> opener) {
        super(new BorderLayout());
        this.id = id;
        this.title = title;
        this.palette = palette;
        this.opener = opener;
        this.tail = new CardTail(palette, title);
        tail.menu(this::moves);
        addHierarchyListener(this::shown);
        Docking.registerDockable(this);
    }

    /** Calls when the words beside the title may have changed. */
    void onRetitle(Runnable listener) {
        retitled = listener;
    }

    Optional<Panel> panel() {
        return panel;
    }

    private void open() {
        if (panel.isEmpty() && isShowing()) {
            opener.get().ifPresent(this::fill);
        }
    }

    private void fill(Panel opened) {
        panel = Optional.of(opened);
        add(opened.view(), BorderLayout.CENTER);
        stale = false;
        retitle();
        revalidate();
        repaint();
    }

    /** Lets go of the panel, if there is one. */
    void empty() {
        panel.ifPresent(Panel::close);
        panel = Optional.empty();
        removeAll();
        retitle();
        revalidate();
        repaint();
    }

    /** Shows the program anew, now if the slot is to be seen, else when it is. */
    void refresh() {
        if (isShowing()) {
            stale = false;
            panel.ifPresent(Panel::refresh);
            retitle();
        } else {
            stale = true;
        }
    }

    void mark(String number) {
        panel.ifPresent(shown -> shown.mark(number));
        retitle();
    }

    String subtitle() {
        return panel.map(Panel::subtitle).orElse("");
    }

    void retitle() {
        tail.tell(subtitle());
        retitled.run();
    }

    /** What can be done with the panel as a whole. */
    List<PanelAction> moves() {
        PanelAction size = Docking.isMaximized(this)
                ? new PanelAction("Show with the others", "", () -> Docking.minimize(this))
                : new PanelAction("Show alone", "", () -> Docking.maximize(this));
        return List.of(
                size,
                new PanelAction("Put in a window of its own", "", () -> Docking.newWindow(this)),
                new PanelAction("Take off this desk", "", () -> Docking.undock(this)));
    }

    /** A panel behind a tab is not opened before somebody looks at it, and not shown anew while nobody does. */
    private void shown(HierarchyEvent event) {
        if ((event.getChangeFlags() & HierarchyEvent.SHOWING_CHANGED) != 0 && isShowing()) {
            if (panel.isEmpty()) {
                // The window is painted first: what takes a moment comes into a window that is there.
                SwingUtilities.invokeLater(() -> SwingUtilities.invokeLater(this::open));
            } else if (stale) {
                refresh();
            }
        }
    }

    @Override
    public DockingHeaderUI createHeaderUI(HeaderController controller, HeaderModel model) {
        return new CardHead(title, tail, palette);
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
    public DockableTabPreference getTabPreference() {
        return DockableTabPreference.TOP;
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
