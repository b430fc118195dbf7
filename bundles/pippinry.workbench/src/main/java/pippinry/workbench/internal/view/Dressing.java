package pippinry.workbench.internal.view;

import io.github.andrewauclair.moderndocking.app.RootDockingPanel;
import java.awt.Component;
import java.awt.Container;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;
import javax.swing.SwingUtilities;
import javax.swing.border.Border;
import pippinry.panels.Palette;

/** Makes what the docking library puts together look like cards on the ground: edges, and words beside the tabs. */
final class Dressing {

    private static final String TAIL = "JTabbedPane.trailingComponent";
    private static final int GAP = 12;

    private final Palette palette;
    private final Border edge;

    Dressing(Palette palette) {
        this.palette = palette;
        this.edge = new CardBorder(palette);
    }

    void ground(RootDockingPanel root) {
        root.setBackground(palette.ground());
        root.setBorder(BorderFactory.createEmptyBorder(GAP, GAP, GAP, GAP));
    }

    /** Dresses the slots that are docked; those dressed already stay as they are. */
    void dress(Stream<Slot> slots) {
        slots.forEach(this::dress);
    }

    private void dress(Slot slot) {
        card(slot).ifPresent(card -> {
            if (card.getBorder() != edge) {
                card.setBorder(edge);
                card.setBackground(palette.card());
            }
        });
        if (SwingUtilities.getAncestorOfClass(JTabbedPane.class, slot) instanceof JTabbedPane tabs) {
            dress(tabs);
        }
    }

    /** What lies on the ground: the outermost part around the slot that is not the ground or a divided area itself. */
    private static Optional<JComponent> card(Slot slot) {
        Component part = slot;
        while (part.getParent() != null && !isGround(part.getParent())) {
            part = part.getParent();
        }
        return part.getParent() != null && part instanceof JComponent card ? Optional.of(card) : Optional.empty();
    }

    private static boolean isGround(Container container) {
        return container instanceof JSplitPane || container instanceof RootDockingPanel;
    }

    private void dress(JTabbedPane tabs) {
        if (tabs.getClientProperty(TAIL) == null) {
            CardTail tail = new CardTail(palette, "this panel");
            tail.menu(() -> front(tabs).map(Slot::moves).orElse(java.util.List.of()));
            tabs.putClientProperty(TAIL, tail);
            tabs.addChangeListener(event -> tell(tabs));
        }
        tell(tabs);
    }

    private static void tell(JTabbedPane tabs) {
        if (tabs.getClientProperty(TAIL) instanceof CardTail tail) {
            tail.tell(front(tabs).map(Slot::subtitle).orElse(""));
        }
    }

    private static Optional<Slot> front(JTabbedPane tabs) {
        return tabs.getSelectedComponent() instanceof Container shown ? slotIn(shown) : Optional.empty();
    }

    private static Optional<Slot> slotIn(Container container) {
        return Stream.of(container.getComponents())
                .filter(Slot.class::isInstance)
                .map(Slot.class::cast)
                .findFirst();
    }
}
