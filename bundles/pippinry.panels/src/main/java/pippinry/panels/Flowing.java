package pippinry.panels;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.LayoutManager;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;

/** Lays things out side by side from the left, each as wide as it likes, and goes on below when the width is used up. */
final class Flowing implements LayoutManager {

    private static final int UNPLACED_WIDTH = Integer.MAX_VALUE / 2;

    private final int gap;
    private int laidOutAt = -1;

    Flowing(int gap) {
        this.gap = gap;
    }

    @Override
    public void addLayoutComponent(String name, Component component) {
        // All are alike.
    }

    @Override
    public void removeLayoutComponent(Component component) {
        // Nothing is kept of it.
    }

    @Override
    public Dimension preferredLayoutSize(Container parent) {
        return place(parent, parent.getWidth() > 0 ? parent.getWidth() : UNPLACED_WIDTH, false);
    }

    @Override
    public Dimension minimumLayoutSize(Container parent) {
        return new Dimension(0, preferredLayoutSize(parent).height);
    }

    @Override
    public void layoutContainer(Container parent) {
        place(parent, parent.getWidth(), true);
        // Another width may want another height: what lies below moves in the next round.
        if (laidOutAt != parent.getWidth() && parent instanceof JComponent component) {
            laidOutAt = parent.getWidth();
            if (preferredLayoutSize(parent).height != parent.getHeight()) {
                component.invalidate();
                SwingUtilities.invokeLater(component::revalidate);
            }
        }
    }

    private Dimension place(Container parent, int width, boolean move) {
        Insets insets = parent.getInsets();
        int right = width - insets.right;
        List<Component> line = new ArrayList<>();
        int x = insets.left;
        int y = insets.top;
        int widest = 0;
        for (Component part : parent.getComponents()) {
            if (!part.isVisible()) {
                continue;
            }
            int partWidth = part.getPreferredSize().width;
            if (!line.isEmpty() && x + partWidth > right) {
                y += place(line, insets.left, y, right, move) + gap;
                line.clear();
                x = insets.left;
            }
            line.add(part);
            x += partWidth + gap;
            widest = Math.max(widest, x - gap);
        }
        int below = y + place(line, insets.left, y, right, move);
        return new Dimension(widest + insets.right, below + insets.bottom);
    }

    /** Things on one line stand with their middles at one height. @return the height of the line */
    private int place(List<Component> line, int left, int y, int right, boolean move) {
        int height = line.stream()
                .mapToInt(part -> part.getPreferredSize().height)
                .max()
                .orElse(0);
        int x = left;
        for (Component part : line) {
            Dimension size = part.getPreferredSize();
            if (move) {
                int fitting = Math.max(1, Math.min(size.width, right - x));
                part.setBounds(x, y + (height - size.height) / 2, fitting, size.height);
            }
            x += size.width + gap;
        }
        return height;
    }
}
