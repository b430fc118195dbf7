package pippinry.panels;

import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JTable;

/**
 * Paints components without a window. Without a peer {@code validate} does nothing and {@code doLayout} reaches one
 * level only, so layout runs from the root down, in rounds: each next one knows the widths at which text wraps.
 */
public final class Painting {

    private static final int ROUNDS = 3;

    private Painting() {}

    /**
     * The component as it would look at this size; call on the event dispatch thread.
     *
     * @param scale pixels for each of the component's own
     */
    public static BufferedImage of(JComponent component, int width, int height, double scale) {
        component.setSize(width, height);
        for (int round = 0; round < ROUNDS; round++) {
            layOut(component);
        }
        BufferedImage image = new BufferedImage(
                (int) Math.round(width * scale), (int) Math.round(height * scale), BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        graphics.scale(scale, scale);
        component.printAll(graphics);
        graphics.dispose();
        return image;
    }

    private static void layOut(Component component) {
        if (component instanceof JScrollPane pane && pane.getViewport().getView() instanceof JTable table) {
            pane.setColumnHeaderView(table.getTableHeader());
        }
        component.invalidate();
        component.doLayout();
        if (component instanceof Container container) {
            for (Component child : container.getComponents()) {
                layOut(child);
            }
        }
    }
}
