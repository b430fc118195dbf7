package pippinry.lineage.internal.view;

import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.RoundRectangle2D;
import java.util.List;
import java.util.Locale;
import pippinry.panels.Palette;
import pippinry.panels.Picture;

/**
 * Coancestry of each two of some parents, by figure and by shade; the diagonal tells a parent's own, (1 + F)/2. Names stand
 * to the left and, turned, above.
 *
 * @param names of the parents
 * @param values symmetric, from 0 to 1
 */
record HeatMap(List<String> names, double[][] values, Palette palette) implements Picture {

    private static final int LARGEST_CELL = 44;
    private static final int GAP = 2;
    private static final double DARKEST = 0.25;
    private static final int READABLE = 20;

    @Override
    public void paint(Graphics2D graphics, int width, int height) {
        Font usual = graphics.getFont();
        graphics.setFont(usual.deriveFont(usual.getSize2D() - 1));
        FontMetrics metrics = graphics.getFontMetrics();
        int margin = names.stream().mapToInt(metrics::stringWidth).max().orElse(0) + 8;
        double cell =
                Math.min(LARGEST_CELL, Math.min(width - margin, height - margin) / (double) Math.max(1, names.size()));
        for (int i = 0; i < names.size(); i++) {
            name(graphics, i, margin, cell);
            for (int j = 0; j < names.size(); j++) {
                cell(graphics, values[i][j], margin + j * cell, margin + i * cell, cell - GAP);
            }
        }
        graphics.setFont(usual);
    }

    private void name(Graphics2D graphics, int index, int margin, double cell) {
        FontMetrics metrics = graphics.getFontMetrics();
        String name = names.get(index);
        double middle = margin + index * cell + cell / 2 + (metrics.getAscent() - metrics.getDescent()) / 2.0;
        graphics.setColor(palette.text());
        graphics.drawString(name, margin - 6 - metrics.stringWidth(name), (float) middle);
        AffineTransform before = graphics.getTransform();
        graphics.rotate(-Math.PI / 2, middle, margin - 6);
        graphics.drawString(name, (float) middle, (float) (margin - 6));
        graphics.setTransform(before);
    }

    private void cell(Graphics2D graphics, double value, double x, double y, double size) {
        Color ground = palette.shade(0.06 + 0.94 * Math.min(1, value / DARKEST));
        graphics.setColor(ground);
        graphics.fill(new RoundRectangle2D.Double(x, y, size, size, 4, 4));
        if (size >= READABLE) {
            String figure = figure(value);
            FontMetrics metrics = graphics.getFontMetrics();
            graphics.setColor(Palette.inkOn(ground));
            graphics.drawString(figure, (float) (x + (size - metrics.stringWidth(figure)) / 2), (float)
                    (y + (size + metrics.getAscent() - metrics.getDescent()) / 2));
        }
    }

    /** Two decimals, without the zero before the point: the cells are small. */
    private static String figure(double value) {
        return value < 0.005 ? "0" : String.format(Locale.ROOT, "%.2f", value).replaceFirst("^0", "");
    }

    /** For who cannot see it. */
    String words() {
        StringBuilder words = new StringBuilder("Coancestry of each two: ");
        for (int i = 0; i < names.size(); i++) {
            for (int j = 0; j < i; j++) {
                words.append(String.format(Locale.ROOT, "%s and %s %.3f; ", names.get(j), names.get(i), values[i][j]));
            }
        }
        return words.toString();
    }
}
