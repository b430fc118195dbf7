package pippinry.lineage.internal.view;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;
import java.util.Optional;
import pippinry.lineage.internal.chart.Card;
import pippinry.lineage.internal.chart.LaidOut;
import pippinry.lineage.internal.chart.Link;
import pippinry.lineage.internal.chart.Place;
import pippinry.lineage.internal.chart.Way;
import pippinry.lineage.internal.kin.Bond.Side;
import pippinry.panels.Palette;
import pippinry.panels.Picture;

/**
 * The chart: rounded cards with number and name, a full line to the seed parent, a dashed one to the pollen parent, a dotted
 * one to the origin of a sport; what is in doubt is a wave with a question mark.
 *
 * @param selected number that is selected everywhere
 * @param marked name of the card on which the keys stand; empty for none
 */
record LineagePicture(LaidOut chart, Palette palette, Optional<String> selected, Optional<String> marked)
        implements Picture {

    private static final int MARGIN = 12;
    private static final double ARC = 12;
    private static final double INSET = 10;
    private static final double BEHIND = 4;
    private static final double BADGE = 8;
    private static final double READABLE = 0.45;
    private static final double TITLE_READABLE = 0.28;
    private static final float SMALLER = 1.5f;

    @Override
    public void paint(Graphics2D graphics, int width, int height) {
        double scale = Math.min(
                (width - 2.0 * MARGIN) / chart.width(), Math.min(1.6, (height - 2.0 * MARGIN) / chart.height()));
        AffineTransform before = graphics.getTransform();
        graphics.translate((width - chart.width() * scale) / 2, (height - chart.height() * scale) / 2);
        graphics.scale(scale, scale);
        draw(graphics, 1);
        graphics.setTransform(before);
    }

    /** @param zoom how large it is seen: what would be too small to read is left out */
    void draw(Graphics2D graphics, double zoom) {
        Font font = graphics.getFont();
        chart.ways().forEach(way -> draw(graphics, way, zoom));
        for (Card card : chart.chart().cards()) {
            Place place = chart.places().get(card.id());
            if (graphics.hitClip(
                    (int) (place.x() - BADGE), (int) (place.y() - BADGE), (int) (place.width() + 2 * BADGE + 1), (int)
                            (place.height() + 2 * BADGE + 1))) {
                draw(graphics, card, place, zoom);
                graphics.setFont(font);
            }
        }
    }

    private void draw(Graphics2D graphics, Way way, double zoom) {
        Path2D path = path(way.points());
        Rectangle2D bounds = path.getBounds2D();
        if (!graphics.hitClip(
                (int) bounds.getX() - 3,
                (int) bounds.getY() - 3,
                (int) bounds.getWidth() + 7,
                (int) bounds.getHeight() + 7)) {
            return;
        }
        Link link = way.link();
        boolean wave = link.isDoubtful() && zoom >= TITLE_READABLE;
        graphics.setColor(link.isDoubtful() ? palette.warning() : palette.accent());
        graphics.setStroke(stroke(link.bond().side()));
        Shape line = wave ? Wavy.along(path) : path;
        graphics.draw(line);
        if (wave) {
            badge(graphics, link.badge(), way.points());
        }
    }

    private static BasicStroke stroke(Side side) {
        return switch (side) {
            case SEED -> new BasicStroke(1.6f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
            case POLLEN ->
                new BasicStroke(1.6f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {7, 4}, 0);
            case SPORT ->
                new BasicStroke(1.8f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, 1, new float[] {0.1f, 4}, 0);
        };
    }

    private static Path2D path(List<double[]> points) {
        Path2D path = new Path2D.Double();
        path.moveTo(points.get(0)[0], points.get(0)[1]);
        int i = 1;
        for (; i + 2 < points.size(); i += 3) {
            double[] end = points.get(i + 2);
            path.curveTo(
                    points.get(i)[0], points.get(i)[1], points.get(i + 1)[0], points.get(i + 1)[1], end[0], end[1]);
        }
        for (; i < points.size(); i++) {
            path.lineTo(points.get(i)[0], points.get(i)[1]);
        }
        return path;
    }

    /** Stands before the child, where the line ends. */
    private void badge(Graphics2D graphics, String words, List<double[]> points) {
        double[] end = points.get(points.size() - 1);
        FontMetrics metrics = graphics.getFontMetrics();
        double width = Math.max(2 * BADGE, metrics.stringWidth(words) + BADGE);
        RoundRectangle2D shape =
                new RoundRectangle2D.Double(end[0] - width - 3, end[1] - BADGE, width, 2 * BADGE, 2 * BADGE, 2 * BADGE);
        graphics.setStroke(new BasicStroke(1));
        graphics.setColor(palette.card());
        graphics.fill(shape);
        graphics.setColor(palette.warning());
        graphics.draw(shape);
        graphics.drawString(words, (float) (shape.getCenterX() - metrics.stringWidth(words) / 2.0), (float)
                (shape.getCenterY() + (metrics.getAscent() - metrics.getDescent()) / 2.0));
    }

    private void draw(Graphics2D graphics, Card card, Place place, double zoom) {
        boolean isSelected = selected.filter(card.number()::equals).isPresent();
        boolean isMarked = marked.filter(card.id()::equals).isPresent();
        if (card.isFamily()) {
            outline(graphics, shape(place, BEHIND), palette.card(), palette.line(), 1);
        }
        Color ground = isSelected ? palette.soft() : palette.card();
        Color edge = isSelected ? palette.accent() : isMarked ? palette.text() : palette.line();
        outline(graphics, shape(place, 0), ground, edge, isSelected || isMarked ? 2 : 1);
        if (!card.doubts().isEmpty() && zoom >= READABLE) {
            mark(graphics, place);
        }
        if (zoom >= TITLE_READABLE) {
            words(graphics, card, place, zoom);
        }
    }

    private static RoundRectangle2D shape(Place place, double aside) {
        return new RoundRectangle2D.Double(
                place.x() + aside, place.y() + aside, place.width(), place.height(), ARC, ARC);
    }

    private static void outline(Graphics2D graphics, Shape shape, Color ground, Color edge, float width) {
        graphics.setColor(ground);
        graphics.fill(shape);
        graphics.setColor(edge);
        graphics.setStroke(new BasicStroke(width));
        graphics.draw(shape);
    }

    /** A question mark in the corner: something of this one's descent is not sure. */
    private void mark(Graphics2D graphics, Place place) {
        double x = place.x() + place.width() - 2.2 * BADGE;
        double y = place.y() + 0.6 * BADGE;
        graphics.setColor(palette.warning());
        graphics.setStroke(new BasicStroke(1));
        graphics.draw(new Ellipse2D.Double(x, y, 1.6 * BADGE, 1.6 * BADGE));
        Font usual = graphics.getFont();
        graphics.setFont(usual.deriveFont(usual.getSize2D() - 2));
        FontMetrics metrics = graphics.getFontMetrics();
        graphics.drawString("?", (float) (x + 0.8 * BADGE - metrics.stringWidth("?") / 2.0), (float)
                (y + 0.8 * BADGE + (metrics.getAscent() - metrics.getDescent()) / 2.0));
        graphics.setFont(usual);
    }

    private void words(Graphics2D graphics, Card card, Place place, double zoom) {
        Font usual = graphics.getFont();
        graphics.setFont(usual.deriveFont(Font.BOLD));
        graphics.setColor(palette.text());
        FontMetrics metrics = graphics.getFontMetrics();
        double room = place.width() - 2 * INSET;
        double titleRoom = card.doubts().isEmpty() ? room : room - 2 * BADGE;
        graphics.drawString(
                fitted(card.title(), metrics, titleRoom), (float) (place.x() + INSET), (float) (place.y() + 18));
        graphics.setFont(usual.deriveFont(usual.getSize2D() - SMALLER));
        if (zoom >= READABLE) {
            graphics.setColor(palette.quiet());
            graphics.drawString(
                    fitted(card.subtitle(), graphics.getFontMetrics(), room), (float) (place.x() + INSET), (float)
                            (place.y() + 35));
        }
        graphics.setFont(usual);
    }

    private static String fitted(String text, FontMetrics metrics, double room) {
        if (metrics.stringWidth(text) <= room) {
            return text;
        }
        int length = text.length();
        while (length > 1 && metrics.stringWidth(text.substring(0, length) + "…") > room) {
            length--;
        }
        return text.substring(0, length).strip() + "…";
    }
}
