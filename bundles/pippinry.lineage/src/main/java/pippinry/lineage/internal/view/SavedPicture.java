package pippinry.lineage.internal.view;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import javax.swing.UIManager;
import pippinry.lineage.internal.chart.LaidOut;
import pippinry.panels.Palette;

/** Writes a chart to a PNG, twice as fine as a screen. */
final class SavedPicture {

    private static final int FINER = 2;
    private static final int MARGIN = 24;
    private static final int LARGEST = 12_000;

    private SavedPicture() {}

    static Palette paper() {
        return Palette.light();
    }

    /** @return what to tell the person */
    static String save(LineagePicture picture, LaidOut chart, Path file) {
        int width = pixels(chart.width());
        int height = pixels(chart.height());
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        graphics.setFont(UIManager.getFont("Label.font"));
        graphics.setColor(paper().card());
        graphics.fillRect(0, 0, width, height);
        graphics.scale(FINER, FINER);
        picture.paint(graphics, width / FINER, height / FINER);
        graphics.dispose();
        try {
            ImageIO.write(image, "png", file.toFile());
            return "The chart is in " + file;
        } catch (IOException e) {
            return "The chart could not be written to " + file + ": " + e.getMessage();
        }
    }

    private static int pixels(double size) {
        return (int) Math.min(LARGEST, (size + 2 * MARGIN) * FINER);
    }
}
