package pippinry.workbench.internal.view;

import io.github.andrewauclair.moderndocking.DockingRegion;
import io.github.andrewauclair.moderndocking.api.DockingStateAPI;
import io.github.andrewauclair.moderndocking.app.Docking;
import io.github.andrewauclair.moderndocking.layouts.ApplicationLayout;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import pippinry.panels.Panel;
import pippinry.panels.PanelContext;
import pippinry.panels.PanelProvider;
import pippinry.panels.PanelProvider.Desk;
import pippinry.panels.PanelProvider.Spot;

/** The panels that are there, and how each desk arranges them. */
final class Docks {

    private static final double BESIDE_SHARE = 0.4;
    private static final double BELOW_SHARE = 0.42;

    private final JFrame frame;
    private final PanelContext context;
    private final SavedDesks saved;
    private final Dressing dressing;
    // The library's own is bound to the first window of the process.
    private final DockingStateAPI arrangement = new DockingStateAPI(Docking.getSingleInstance()) {};
    private final Map<String, PanelProvider> providers = new LinkedHashMap<>();
    private final Map<String, Slot> slots = new LinkedHashMap<>();
    private final Map<Desk, ApplicationLayout> layouts = new EnumMap<>(Desk.class);
    private Desk desk;
    private boolean dressingWaits;
    private boolean closed;

    Docks(JFrame frame, PanelContext context, SavedDesks saved, Dressing dressing, Desk first) {
        this.frame = frame;
        this.context = context;
        this.saved = saved;
        this.dressing = dressing;
        this.desk = first;
        saved.panelsNamed().forEach((id, title) -> slots.put(id, slot(id, title)));
        layouts.putAll(saved.read());
        Docking.addDockingListener(event -> dress());
    }

    private Slot slot(String id, String title) {
        Slot slot = new Slot(id, title, context.palette(), () -> open(id));
        slot.onRetitle(this::dress);
        return slot;
    }

    private Optional<Panel> open(String id) {
        return Optional.ofNullable(providers.get(id)).map(provider -> provider.open(context));
    }

    /** The panel that a person works in first gets the keys. */
    void focusFirst() {
        providers().stream()
                .map(provider -> slots.get(provider.id()))
                .filter(Slot::isShowing)
                .findFirst()
                .flatMap(Slot::panel)
                .ifPresent(panel -> panel.view().requestFocusInWindow());
    }

    /** Brings the panel beside the one with the focus to the front, round and round. @param step 1 or -1 */
    void next(int step) {
        List<Slot> docked = providers().stream()
                .map(provider -> slots.get(provider.id()))
                .filter(Docking::isDocked)
                .toList();
        if (!docked.isEmpty()) {
            Component focused =
                    KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
            int now = docked.indexOf(SwingUtilities.getAncestorOfClass(Slot.class, focused));
            show(docked.get(Math.floorMod(now + step, docked.size())).getPersistentID());
        }
    }

    /** Once for all that was moved together. */
    private void dress() {
        if (!dressingWaits) {
            dressingWaits = true;
            SwingUtilities.invokeLater(() -> {
                dressingWaits = false;
                if (!closed) {
                    dressing.dress(slots.values().stream().filter(Docking::isDocked));
                }
            });
        }
    }

    Desk desk() {
        return desk;
    }

    List<PanelProvider> providers() {
        return providers.values().stream()
                .sorted(Comparator.comparingInt(PanelProvider::order).thenComparing(PanelProvider::title))
                .toList();
    }

    Optional<Panel> panel(String id) {
        return Optional.ofNullable(slots.get(id)).flatMap(Slot::panel);
    }

    /** Takes in panels that came together, and arranges the desk anew if it has a place for one of them. */
    void arrive(List<PanelProvider> come) {
        for (PanelProvider provider : come) {
            providers.put(provider.id(), provider);
            slots.computeIfAbsent(provider.id(), id -> slot(id, provider.title()));
        }
        arrange();
    }

    /** Lets go of a panel whose bundle stops; its place on every desk is kept. */
    void leave(PanelProvider provider) {
        if (providers.remove(provider.id(), provider)) {
            keep();
            Slot slot = slots.get(provider.id());
            if (Docking.isDocked(slot)) {
                Docking.undock(slot);
            }
            slot.empty();
        }
    }

    void change(Desk next) {
        if (next != desk) {
            keep();
            desk = next;
            arrange();
        }
    }

    /** Brings a panel to the front, putting it on this desk if it is not there. */
    void show(String id) {
        Slot slot = slots.get(id);
        if (slot == null || !providers.containsKey(id)) {
            return;
        }
        if (!Docking.isDocked(slot)) {
            dock(slot, providers.get(id).spot());
        }
        Docking.bringToFront(slot);
        slot.panel().ifPresent(panel -> panel.view().requestFocusInWindow());
    }

    void refresh() {
        slots.values().forEach(Slot::refresh);
    }

    void mark(String number) {
        slots.values().forEach(slot -> slot.mark(number));
    }

    /** Work of a panel was shown: what stands beside its title may have changed. */
    void retitle() {
        slots.values().forEach(Slot::retitle);
    }

    /** Puts every panel of this desk back where it stands when nobody has moved anything. */
    void reset() {
        layouts.remove(desk);
        arrange();
    }

    void save() {
        keep();
        saved.write(
                layouts,
                slots.values().stream()
                        .filter(slot -> !slot.getTabText().isEmpty())
                        .toList());
    }

    void close() {
        closed = true;
        slots.values().forEach(Slot::empty);
    }

    /** Remembers the arrangement, unless a panel that belongs to it is away. */
    private void keep() {
        boolean complete = slots.values().stream()
                .allMatch(slot -> providers.containsKey(slot.getPersistentID()) || !namedIn(layouts.get(desk), slot));
        if (complete && slots.values().stream().anyMatch(Docking::isDocked)) {
            layouts.put(desk, arrangement.getApplicationLayout());
        }
    }

    private static boolean namedIn(ApplicationLayout layout, Slot slot) {
        return layout != null && SavedDesks.names(layout).contains(slot.getPersistentID());
    }

    private void arrange() {
        ApplicationLayout layout = layouts.get(desk);
        slots.values().stream().filter(Docking::isDocked).forEach(Docking::undock);
        if (layout == null) {
            arrangeAsOnTheFirstDay();
        } else {
            arrangement.restoreApplicationLayout(layout);
            Dividers.restore(frame, layout);
            slots.values().stream()
                    .filter(slot -> !providers.containsKey(slot.getPersistentID()) && Docking.isDocked(slot))
                    .forEach(Docking::undock);
            dockNewcomers(layout);
        }
        frame.validate();
    }

    private void arrangeAsOnTheFirstDay() {
        for (PanelProvider provider : providers()) {
            if (provider.desks().contains(desk)) {
                dock(slots.get(provider.id()), provider.spot());
                frame.validate();
            }
        }
        firstOfEachSpot();
    }

    private void firstOfEachSpot() {
        for (Spot spot : Spot.values()) {
            providers().stream()
                    .filter(provider ->
                            provider.spot() == spot && provider.desks().contains(desk))
                    .findFirst()
                    .ifPresent(provider -> Docking.bringToFront(slots.get(provider.id())));
        }
    }

    /** A panel that came after the desk was saved is put on it, as on a first day. */
    private void dockNewcomers(ApplicationLayout layout) {
        List<String> known = saved.everSeen(layout);
        for (PanelProvider provider : providers()) {
            Slot slot = slots.get(provider.id());
            if (provider.desks().contains(desk) && !Docking.isDocked(slot) && !known.contains(provider.id())) {
                dock(slot, provider.spot());
                frame.validate();
            }
        }
    }

    private void dock(Slot slot, Spot spot) {
        Optional<Slot> mate = mate(slot, spot);
        if (mate.isPresent()) {
            Docking.dock(slot, mate.get(), DockingRegion.CENTER);
            return;
        }
        switch (spot) {
            case MAIN ->
                Docking.dock(
                        slot, frame, nothingDocked() ? DockingRegion.CENTER : DockingRegion.WEST, 1 - BESIDE_SHARE);
            case BESIDE -> Docking.dock(slot, frame, DockingRegion.EAST, BESIDE_SHARE);
            case BELOW ->
                mate(slot, Spot.MAIN)
                        .ifPresentOrElse(
                                main -> Docking.dock(slot, main, DockingRegion.SOUTH, BELOW_SHARE),
                                () -> Docking.dock(slot, frame, DockingRegion.SOUTH, BELOW_SHARE));
        }
    }

    private boolean nothingDocked() {
        return slots.values().stream().noneMatch(Docking::isDocked);
    }

    private Optional<Slot> mate(Slot slot, Spot spot) {
        return providers().stream()
                .filter(provider -> provider.spot() == spot)
                .map(provider -> slots.get(provider.id()))
                .filter(other -> other != slot && Docking.isDocked(other))
                .findFirst();
    }
}
