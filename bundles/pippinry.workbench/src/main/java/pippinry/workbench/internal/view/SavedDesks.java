package pippinry.workbench.internal.view;

import io.github.andrewauclair.moderndocking.api.LayoutPersistenceAPI;
import io.github.andrewauclair.moderndocking.app.Docking;
import io.github.andrewauclair.moderndocking.exception.DockingLayoutException;
import io.github.andrewauclair.moderndocking.layouts.ApplicationLayout;
import io.github.andrewauclair.moderndocking.layouts.DockingLayoutNode;
import io.github.andrewauclair.moderndocking.layouts.DockingSimplePanelNode;
import io.github.andrewauclair.moderndocking.layouts.DockingSplitPanelNode;
import io.github.andrewauclair.moderndocking.layouts.DockingTabPanelNode;
import io.github.andrewauclair.moderndocking.layouts.WindowLayout;
import java.io.File;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import pippinry.panels.PanelProvider.Desk;
import pippinry.workbench.internal.OwnFolder;

/** Keeps the desks in the person's own folder. */
final class SavedDesks {

    private static final String PANELS = "panels";

    private final OwnFolder folder;
    private final LayoutPersistenceAPI files = new LayoutPersistenceAPI(Docking.getSingleInstance()) {};

    SavedDesks(OwnFolder folder) {
        this.folder = folder;
    }

    /** Ids and titles of all panels that a saved desk may name; they must have a slot before a desk is restored. */
    Map<String, String> panelsNamed() {
        Map<String, String> named = new LinkedHashMap<>();
        for (String pair : folder.remembered(PANELS).orElse("").split(";")) {
            int sign = pair.indexOf('=');
            if (sign > 0) {
                named.put(pair.substring(0, sign), pair.substring(sign + 1));
            }
        }
        return named;
    }

    Map<Desk, ApplicationLayout> read() {
        Map<Desk, ApplicationLayout> layouts = new EnumMap<>(Desk.class);
        for (Desk desk : Desk.values()) {
            File file = file(desk);
            if (file.isFile()) {
                read(file, layouts, desk);
            }
        }
        return layouts;
    }

    private void read(File file, Map<Desk, ApplicationLayout> layouts, Desk desk) {
        try {
            ApplicationLayout layout = files.loadApplicationLayoutFromFile(file);
            if (panelsNamed().keySet().containsAll(names(layout))) {
                layouts.put(desk, layout);
            }
        } catch (DockingLayoutException | RuntimeException e) {
            // A desk that cannot be read is laid out as on the first day.
            layouts.remove(desk);
        }
    }

    void write(Map<Desk, ApplicationLayout> layouts, List<Slot> slots) {
        folder.remember(
                PANELS,
                slots.stream()
                        .map(slot -> slot.getPersistentID() + "=" + slot.getTabText())
                        .collect(Collectors.joining(";")));
        layouts.forEach((desk, layout) -> {
            try {
                files.saveLayoutToFile(file(desk), layout);
            } catch (DockingLayoutException e) {
                throw new IllegalStateException("Cannot keep the " + desk + " desk in " + file(desk), e);
            }
        });
    }

    /** Panels known when desks were last written: one of them that a desk lacks was taken off by the person. */
    List<String> everSeen(ApplicationLayout layout) {
        Set<String> seen = new LinkedHashSet<>(panelsNamed().keySet());
        seen.addAll(names(layout));
        return List.copyOf(seen);
    }

    /** Ids of the panels on a desk, floating ones too. */
    static Set<String> names(ApplicationLayout layout) {
        Set<String> names = new LinkedHashSet<>();
        collect(layout.getMainFrameLayout(), names);
        layout.getFloatingFrameLayouts().forEach(window -> collect(window, names));
        return names;
    }

    private static void collect(WindowLayout window, Collection<String> names) {
        collect(window.getRootNode(), names);
    }

    private static void collect(DockingLayoutNode node, Collection<String> names) {
        if (node instanceof DockingSimplePanelNode simple) {
            names.add(simple.getPersistentID());
        } else if (node instanceof DockingTabPanelNode tabs) {
            tabs.getPersistentIDs().forEach(tab -> names.add(tab.getPersistentID()));
        } else if (node instanceof DockingSplitPanelNode split) {
            collect(split.getLeft(), names);
            collect(split.getRight(), names);
        }
    }

    private File file(Desk desk) {
        return folder.file("desk-" + desk.name().toLowerCase(Locale.ROOT) + ".xml")
                .toFile();
    }
}
