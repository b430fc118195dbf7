package pippinry.nursery.internal.emergence;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import pippinry.panels.Palette;
import pippinry.panels.Picture;

/** What share of each lot stood by when: counts as marks of their own shape, and the fitted curve through them. */
public final class EmergencePicture implements Picture {

    private static final int LEFT = 34;
    private static final int RIGHT = 96;
    private static final int TOP = 8;
    private static final int FOOT = 30;
    private static final int WEEK = 7;
    private static final int LABEL = 11;

    private final List<LotEmergence> lots;
    private final double lastDay;
    private final Palette palette = Palette.light();

    /** @param lots up to eight, so that marks stay apart */
    public EmergencePicture(List<LotEmergence> lots) {
        this.lots = List.copyOf(lots);
        double last =
                lots.stream().mapToDouble(lot -> lot.counting().lastDay()).max().orElse(WEEK);
        this.lastDay = Math.ceil(last / WEEK + 0.5) * WEEK;
    }

    @Override
    public void paint(Graphics2D graphics, int width, int height) {
        graphics.setFont(graphics.getFont().deriveFont(8.5f));
        axes(graphics, width, height);
        List<Double> labels = labelHeights(height);
        for (int i = 0; i < lots.size(); i++) {
            lot(graphics, i, labels.get(i), width, height);
        }
    }

    private void axes(Graphics2D graphics, int width, int height) {
        graphics.setStroke(new BasicStroke(0.5f));
        for (int percent = 0; percent <= 100; percent += 25) {
            double y = y(percent / 100.0, height);
            graphics.setColor(palette.line());
            graphics.draw(new Line2D.Double(LEFT, y, width - RIGHT, y));
            graphics.setColor(palette.quiet());
            String text = percent + " %";
            graphics.drawString(text, LEFT - 5 - graphics.getFontMetrics().stringWidth(text), (float) y + 3);
        }
        for (int day = 0; day <= lastDay; day += WEEK) {
            String text = Integer.toString(day);
            double x = x(day, width);
            graphics.drawString(
                    text, (float) x - graphics.getFontMetrics().stringWidth(text) / 2f, height - FOOT + 13f);
        }
        graphics.drawString("days after sowing", LEFT, height - 4);
    }

    private void lot(Graphics2D graphics, int number, double labelHeight, int width, int height) {
        LotEmergence lot = lots.get(number);
        Color color = Palette.series(number);
        graphics.setColor(color);
        graphics.setStroke(new BasicStroke(1.2f));
        lot.curve().ifPresent(curve -> graphics.draw(path(curve, width, height)));
        int stood = 0;
        for (Counting.Interval interval : lot.counting().intervals()) {
            stood += interval.emerged();
            Shape mark = mark(
                    number,
                    x(interval.to(), width),
                    y((double) stood / lot.counting().sown(), height));
            graphics.fill(mark);
        }
        graphics.fill(mark(number, width - RIGHT + 9.0, labelHeight - 3));
        graphics.setColor(palette.text());
        graphics.drawString(
                lot.lot().code().text() + "  " + Math.round(lot.share() * 100) + " %", width - RIGHT + 16, (float)
                        labelHeight);
    }

    private Path2D path(EmergenceCurve curve, int width, int height) {
        Path2D path = new Path2D.Double();
        path.moveTo(x(0, width), y(0, height));
        for (double day = 0.5; day <= lastDay; day += 0.5) {
            path.lineTo(x(day, width), y(curve.at(day), height));
        }
        return path;
    }

    /** A shape for each, so that colour is not needed to tell them apart. */
    private static Shape mark(int number, double x, double y) {
        return switch (number % 4) {
            case 0 -> new Ellipse2D.Double(x - 2.5, y - 2.5, 5, 5);
            case 1 -> new Rectangle2D.Double(x - 2.3, y - 2.3, 4.6, 4.6);
            case 2 -> polygon(x, y, 0, -3, 3, 2.4, -3, 2.4);
            default -> polygon(x, y, 0, -3.2, 3.2, 0, 0, 3.2, -3.2, 0);
        };
    }

    private static Shape polygon(double x, double y, double... offsets) {
        Path2D path = new Path2D.Double();
        path.moveTo(x + offsets[0], y + offsets[1]);
        for (int i = 2; i < offsets.length; i += 2) {
            path.lineTo(x + offsets[i], y + offsets[i + 1]);
        }
        path.closePath();
        return path;
    }

    /** Labels stand beside the end of their lot, pushed apart where they would touch. */
    private List<Double> labelHeights(int height) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < lots.size(); i++) {
            order.add(i);
        }
        order.sort((one, other) ->
                Double.compare(lots.get(other).share(), lots.get(one).share()));
        Double[] heights = new Double[lots.size()];
        double lowest = height - FOOT - (lots.size() - 1) * (double) LABEL;
        double next = TOP + 6;
        for (int number : order) {
            double wanted = Math.min(y(lots.get(number).share(), height) + 3, lowest);
            next = Math.max(next, wanted);
            heights[number] = next;
            next += LABEL;
            lowest += LABEL;
        }
        return List.of(heights);
    }

    private double x(double day, int width) {
        return LEFT + (width - LEFT - RIGHT) * day / lastDay;
    }

    private static double y(double share, int height) {
        return height - FOOT - (height - FOOT - TOP) * share;
    }
}
