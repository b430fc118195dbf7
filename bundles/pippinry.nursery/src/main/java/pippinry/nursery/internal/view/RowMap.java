package pippinry.nursery.internal.view;

import java.awt.BasicStroke;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import pippinry.nursery.internal.start.SeedlingsOnHand;
import pippinry.panels.Palette;
import pippinry.panels.Picture;

/** The places of a new row: a dot for each plant, every fifth with its place and the end of its number. */
final class RowMap implements Picture {

    private static final int MARGIN = 16;
    private static final int EACH = 5;
    private static final double DOT = 8;
    private static final int PER_LINE = 30;
    private static final int LINE_HEIGHT = 56;
    private static final int SAVED_WIDTH = 1_600;

    private final SeedlingsOnHand.Plan plan;
    private final Palette palette;

    RowMap(SeedlingsOnHand.Plan plan, Palette palette) {
        this.plan = plan;
        this.palette = palette;
    }

    String words() {
        List<String> numbers = plan.numbers().numbers();
        return "Row " + plan.row() + ": place " + plan.firstPlace() + " is " + numbers.get(0) + ", place "
                + (plan.firstPlace() + numbers.size() - 1) + " is " + numbers.get(numbers.size() - 1);
    }

    @Override
    public void paint(Graphics2D graphics, int width, int height) {
        List<String> numbers = plan.numbers().numbers();
        graphics.setColor(palette.card());
        graphics.fillRect(0, 0, width, height);
        graphics.setColor(palette.text());
        graphics.drawString("Row " + plan.row() + ", counted from its first place", MARGIN, MARGIN);
        double step = (width - 2.0 * MARGIN) / PER_LINE;
        for (int i = 0; i < numbers.size(); i++) {
            double x = MARGIN + step * (i % PER_LINE) + step / 2;
            double y = MARGIN + LINE_HEIGHT * (i / PER_LINE) + LINE_HEIGHT / 2.0;
            if (i % PER_LINE == 0) {
                ground(graphics, width, y);
            }
            dot(graphics, x, y);
            if (i == 0 || (plan.firstPlace() + i) % EACH == 0) {
                label(graphics, numbers.get(i), plan.firstPlace() + i, x, y);
            }
        }
    }

    private void ground(Graphics2D graphics, int width, double y) {
        graphics.setColor(palette.line());
        graphics.setStroke(new BasicStroke(2));
        graphics.draw(new Line2D.Double(MARGIN, y, width - MARGIN, y));
    }

    private void dot(Graphics2D graphics, double x, double y) {
        graphics.setColor(palette.accent());
        graphics.fill(new Ellipse2D.Double(x - DOT / 2, y - DOT / 2, DOT, DOT));
    }

    private void label(Graphics2D graphics, String number, int place, double x, double y) {
        FontMetrics metrics = graphics.getFontMetrics();
        String serial = number.substring(number.lastIndexOf('-'));
        graphics.setColor(palette.text());
        graphics.drawString(serial, (float) (x - metrics.stringWidth(serial) / 2.0), (float) (y - DOT));
        graphics.setColor(palette.quiet());
        String at = Integer.toString(place);
        graphics.drawString(at, (float) (x - metrics.stringWidth(at) / 2.0), (float) (y + DOT + metrics.getAscent()));
    }

    private int height() {
        return MARGIN * 2 + LINE_HEIGHT * (1 + (plan.numbers().numbers().size() - 1) / PER_LINE);
    }

    /** Saves the map as a PNG, twice as fine as a screen. @return what to tell the person */
    static String save(SeedlingsOnHand.Plan plan, Path file) {
        RowMap map = new RowMap(plan, Palette.light());
        int width = SAVED_WIDTH / 2;
        BufferedImage image = new BufferedImage(SAVED_WIDTH, map.height() * 2, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.scale(2, 2);
        map.paint(graphics, width, map.height());
        graphics.dispose();
        try {
            ImageIO.write(image, "png", file.toFile());
            return "The map of row " + plan.row() + " is in " + file;
        } catch (IOException e) {
            return "The map could not be written to " + file + ": " + e.getMessage();
        }
    }
}
