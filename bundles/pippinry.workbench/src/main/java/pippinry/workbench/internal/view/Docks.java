package pippinry.workbench.internal.view;

import io.github.andrewauclair.moderndocking.DockingRegion;
import io.github.andrewauclair.moderndocking.app.Docking;
import io.github.andrewauclair.moderndocking.app.DockingState;
import io.github.andrewauclair.moderndocking.layouts.ApplicationLayout;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JFrame;
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
    private final Map<String, PanelProvider> providers = new LinkedHashMap<>();
    private final Map<String, Slot> slots = new LinkedHashMap<>();
    private final Map<Desk, ApplicationLayout> layouts = new EnumMap<>(Desk.class);
    private Desk desk;

    Docks(JFrame frame, PanelContext context, SavedDesks saved, Desk first) {
        this.frame = frame;
        this.context = context;
        this.saved = saved;
        this.desk = first;
        saved.panelsNamed().forEach((id, title) -> slots.put(id, new Slot(id, title)));
        layouts.putAll(saved.read());
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
            slots.computeIfAbsent(provider.id(), id -> new Slot(id, provider.title()));
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
            fillDocked();
        }
        Docking.bringToFront(slot);
        slot.panel().ifPresent(panel -> panel.view().requestFocusInWindow());
    }

    void refresh() {
        slots.values().forEach(Slot::refresh);
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
        slots.values().forEach(Slot::empty);
    }

    /** Remembers the arrangement, unless a panel that belongs to it is away. */
    private void keep() {
        boolean complete = slots.values().stream()
                .allMatch(slot -> providers.containsKey(slot.getPersistentID()) || !namedIn(layouts.get(desk), slot));
        if (complete && slots.values().stream().anyMatch(Docking::isDocked)) {
            layouts.put(desk, DockingState.getApplicationLayout());
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
            DockingState.restoreApplicationLayout(layout);
            Dividers.restore(frame, layout);
            slots.values().stream()
                    .filter(slot -> !providers.containsKey(slot.getPersistentID()) && Docking.isDocked(slot))
                    .forEach(Docking::undock);
            dockNewcomers(layout);
        }
        fillDocked();
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

    private void fillDocked() {
        for (PanelProvider provider : providers()) {
            Slot slot = slots.get(provider.id());
            if (Docking.isDocked(slot) && !slot.isFilled()) {
                slot.fill(provider.open(context));
            }
        }
    }
}
