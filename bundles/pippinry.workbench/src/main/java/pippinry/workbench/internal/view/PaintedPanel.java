package pippinry.workbench.internal.view;

import java.awt.BorderLayout;
import java.awt.Font;
import java.awt.image.BufferedImage;
import java.lang.reflect.InvocationTargetException;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import pippinry.panels.Painting;
import pippinry.panels.Panel;
import pippinry.panels.PanelProvider;
import pippinry.panels.Theme;
import pippinry.workbench.internal.Session;

/**
 * A panel painted without a window.
 *
 * @param openedMillis how long it took to open and lay out
 * @param faults parts without size, words cut off, names of keys instead of words; empty if all can be read
 */
public record PaintedPanel(BufferedImage image, long openedMillis, List<String> faults) {

    /** The work of a panel runs at once here, so what is painted is what a person sees in the end. */
    public static PaintedPanel of(
            PanelProvider provider, Session session, Theme look, int width, int height, double scale)
            throws InterruptedException {
        AtomicReference<PaintedPanel> painted = new AtomicReference<>();
        try {
            SwingUtilities.invokeAndWait(() -> painted.set(paint(provider, session, look, width, height, scale)));
        } catch (InvocationTargetException e) {
            throw new IllegalStateException("The panel " + provider.title() + " cannot be painted", e.getCause());
        }
        return painted.get();
    }

    private static PaintedPanel paint(
            PanelProvider provider, Session session, Theme look, int width, int height, double scale) {
        long start = System.nanoTime();
        try (Panel panel = provider.open(new PaintingContext(session, look.palette()))) {
            JPanel framed = framed(provider.title(), panel, look);
            BufferedImage image = Painting.of(framed, width, height, scale);
            long millis = (System.nanoTime() - start) / 1_000_000;
            return new PaintedPanel(image, millis, Legibility.faults(framed));
        }
    }

    private static JPanel framed(String title, Panel panel, Theme look) {
        JLabel name = new JLabel(title);
        name.setFont(name.getFont().deriveFont(Font.BOLD, name.getFont().getSize2D() + 1));
        name.setBorder(BorderFactory.createCompoundBorder(
                BorderFactory.createMatteBorder(0, 0, 1, 0, look.palette().line()),
                BorderFactory.createEmptyBorder(8, 12, 8, 12)));
        JPanel card = new JPanel(new BorderLayout());
        card.setBorder(BorderFactory.createLineBorder(look.palette().line()));
        card.add(name, BorderLayout.NORTH);
        card.add(panel.view(), BorderLayout.CENTER);
        JPanel ground = new JPanel(new BorderLayout());
        ground.setBackground(look.palette().ground());
        ground.setBorder(BorderFactory.createEmptyBorder(12, 12, 12, 12));
        ground.add(card);
        return ground;
    }
}
