package pippinry.workbench.internal.view;

import io.github.andrewauclair.moderndocking.layouts.ApplicationLayout;
import io.github.andrewauclair.moderndocking.layouts.DockingLayoutNode;
import io.github.andrewauclair.moderndocking.layouts.DockingSplitPanelNode;
import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JFrame;
import javax.swing.JSplitPane;
import javax.swing.SwingUtilities;

/** Sets the dividers of a restored desk: the docking library sets nested ones too early and loses some. */
final class Dividers {

    private Dividers() {}

    static void restore(JFrame frame, ApplicationLayout layout) {
        List<Double> shares = new ArrayList<>();
        collect(layout.getMainFrameLayout().getRootNode(), shares);
        // Twice later: the library's own attempt comes first.
        SwingUtilities.invokeLater(() -> SwingUtilities.invokeLater(() -> set(frame, shares)));
    }

    private static void set(JFrame frame, List<Double> shares) {
        frame.validate();
        List<JSplitPane> splits = new ArrayList<>();
        collect(frame.getContentPane(), splits);
        for (int i = 0; i < Math.min(splits.size(), shares.size()); i++) {
            splits.get(i).setDividerLocation(shares.get(i));
            splits.get(i).validate();
        }
    }

    private static void collect(DockingLayoutNode node, List<Double> shares) {
        if (node instanceof DockingSplitPanelNode split) {
            shares.add(split.getDividerProportion());
            collect(split.getLeft(), shares);
            collect(split.getRight(), shares);
        }
    }

    private static void collect(Container container, List<JSplitPane> splits) {
        if (container instanceof JSplitPane split) {
            splits.add(split);
        }
        if (!(container instanceof Slot)) {
            for (Component child : container.getComponents()) {
                if (child instanceof Container inner) {
                    collect(inner, splits);
                }
            }
        }
    }
}
