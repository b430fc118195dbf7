package pippinry.labels.internal.view;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.Optional;
import javax.swing.JComponent;
import pippinry.panels.Palette;

/** One page at true size: an inch on paper is as many points as the screen says it has to an inch. */
final class Preview extends JComponent {

    private static final long serialVersionUID = 1;

    private final transient Palette palette;
    private transient Optional<BufferedImage> page = Optional.empty();
    private double scale = 1;

    Preview(Palette palette) {
        this.palette = palette;
    }

    /** @param finer how many dots of the image make a point of the screen, so that it stays sharp */
    void show(BufferedImage image, double finer) {
        page = Optional.of(image);
        scale = finer;
        revalidate();
        repaint();
    }

    void showNothing() {
        page = Optional.empty();
        revalidate();
        repaint();
    }

    @Override
    public Dimension getPreferredSize() {
        return page.map(image -> new Dimension(
                        (int) Math.ceil(image.getWidth() / scale), (int) Math.ceil(image.getHeight() / scale)))
                .orElseGet(() -> new Dimension(1, 1));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        page.ifPresent(image -> {
            Graphics2D own = (Graphics2D) graphics.create();
            own.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            Dimension size = getPreferredSize();
            own.drawImage(image, 0, 0, size.width, size.height, null);
            own.setColor(palette.line());
            own.drawRect(0, 0, size.width - 1, size.height - 1);
            own.dispose();
        });
    }
}
