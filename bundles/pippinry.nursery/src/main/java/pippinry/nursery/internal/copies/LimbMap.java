package pippinry.nursery.internal.copies;

import java.awt.BasicStroke;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import pippinry.model.record.Plant;
import pippinry.model.value.Code;
import pippinry.panels.Palette;
import pippinry.panels.Picture;

/**
 * The limbs of one host tree by height and side, seen from the south: what grows west of the trunk stands left of it, east of
 * it right; the other sides are written beside the name. A limb of unknown height stands at the foot.
 */
public final class LimbMap implements Picture {

    private static final int ROW = 12;
    private static final int MARGIN = 6;
    private static final int LEAST_ROWS = 6;
    private static final Set<String> WEST = Set.of("W", "NW", "SW", "N", "left");

    private final List<Plant> left = new ArrayList<>();
    private final List<Plant> right = new ArrayList<>();
    private final Palette palette = Palette.light();

    /** @param limbs living limbs of the host, at least one */
    public LimbMap(List<Plant> limbs) {
        limbs.stream()
                .sorted(Comparator.comparingDouble(LimbMap::height).reversed())
                .forEach(limb -> (WEST.contains(limb.limbSide()) ? left : right).add(limb));
    }

    public double aspect(int width) {
        int rows = Math.max(LEAST_ROWS, Math.max(left.size(), right.size()));
        return (double) (rows * ROW + 2 * MARGIN) / width;
    }

    @Override
    public void paint(Graphics2D graphics, int width, int height) {
        graphics.setFont(graphics.getFont().deriveFont(8.5f));
        double trunk = width / 2.0;
        graphics.setColor(palette.quiet());
        graphics.setStroke(new BasicStroke(5, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
        graphics.draw(new Line2D.Double(trunk, MARGIN, trunk, height - 1.0));
        side(graphics, left, trunk, -1, height);
        side(graphics, right, trunk, 1, height);
    }

    private void side(Graphics2D graphics, List<Plant> limbs, double trunk, int direction, int height) {
        double tallest = Math.max(0.1, tallest());
        double next = MARGIN + ROW / 2.0;
        double lowest = height - MARGIN - (limbs.size() - 0.5) * ROW;
        for (Plant limb : limbs) {
            double at = MARGIN + ROW / 2.0 + (1 - height(limb) / tallest) * (height - 2.0 * MARGIN - ROW);
            double label = Math.max(next, Math.min(at, lowest));
            limb(graphics, limb, trunk, direction, at, label);
            next = label + ROW;
            lowest += ROW;
        }
    }

    private void limb(Graphics2D graphics, Plant limb, double trunk, int direction, double at, double label) {
        double elbow = trunk + direction * 40;
        double end = trunk + direction * 62;
        graphics.setStroke(new BasicStroke(1));
        graphics.setColor(palette.accent());
        graphics.draw(new Line2D.Double(trunk, at, elbow, label));
        graphics.draw(new Line2D.Double(elbow, label, end, label));
        graphics.fill(new Ellipse2D.Double(trunk - 2.5, at - 2.5, 5, 5));
        graphics.setColor(palette.text());
        String words = words(limb);
        FontMetrics metrics = graphics.getFontMetrics();
        double x = direction > 0 ? end + 4 : end - 4 - metrics.stringWidth(words);
        graphics.drawString(words, (float) x, (float) label + 3);
    }

    private static String words(Plant limb) {
        String genotype = limb.genotype().map(Code::text).orElse("unknown");
        String where = limb.limbHeightM().isPresent()
                ? String.format(Locale.ENGLISH, "%.1f m %s", limb.limbHeightM().getAsDouble(), limb.limbSide())
                : limb.limbSide();
        return limb.tag() + "  " + genotype + (where.isBlank() ? "" : "  " + where.strip());
    }

    private static double height(Plant limb) {
        return limb.limbHeightM().orElse(0);
    }

    private double tallest() {
        return Math.max(
                left.stream().mapToDouble(LimbMap::height).max().orElse(0),
                right.stream().mapToDouble(LimbMap::height).max().orElse(0));
    }
}
