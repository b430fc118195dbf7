package pippinry.nursery.internal.account;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import pippinry.panels.Palette;
import pippinry.panels.Picture;

/**
 * From flower to tree, drawn: a bar for each station as wide as its count, and between two of them what share went on. Counts
 * are sums over the crosses that were counted all along, so that each bar holds the same families.
 */
public final class Funnel implements Picture {

    private static final int ROW = 26;
    private static final int BAR = 16;
    private static final int WORD_WIDTH = 84;
    private static final int SHARE_WIDTH = 92;

    private final Map<Step, Integer> counts;
    private final Palette palette = Palette.light();

    /** @param counts at least two stations, in their order */
    public Funnel(Map<Step, Integer> counts) {
        this.counts = new java.util.EnumMap<>(counts);
    }

    /** Height as a share of a width. */
    public double aspect(int width) {
        return (double) (counts.size() * ROW) / width;
    }

    @Override
    public void paint(Graphics2D graphics, int width, int height) {
        graphics.setFont(graphics.getFont().deriveFont(9f));
        graphics.setStroke(new BasicStroke(0.7f));
        List<Step> steps = List.copyOf(counts.keySet());
        for (int i = 0; i < steps.size(); i++) {
            if (i + 1 < steps.size()) {
                neck(graphics, steps.get(i), steps.get(i + 1), i * ROW, width);
            }
        }
        for (int i = 0; i < steps.size(); i++) {
            bar(graphics, steps.get(i), i * ROW, width);
            if (i > 0) {
                share(graphics, steps.get(i - 1), steps.get(i), i * ROW, width);
            }
        }
    }

    private void neck(Graphics2D graphics, Step from, Step to, int top, int width) {
        double middle = middle(width);
        Path2D neck = new Path2D.Double();
        neck.moveTo(middle - half(from, width), top + BAR);
        neck.lineTo(middle + half(from, width), top + BAR);
        neck.lineTo(middle + half(to, width), top + ROW);
        neck.lineTo(middle - half(to, width), top + ROW);
        neck.closePath();
        graphics.setColor(palette.soft());
        graphics.fill(neck);
    }

    private void bar(Graphics2D graphics, Step step, int top, int width) {
        double half = half(step, width);
        RoundRectangle2D bar = new RoundRectangle2D.Double(middle(width) - half, top, 2 * half, BAR, 4, 4);
        graphics.setColor(palette.accent());
        graphics.fill(bar);
        FontMetrics metrics = graphics.getFontMetrics();
        String count = String.format(Locale.ENGLISH, "%,d", counts.get(step));
        double text = metrics.stringWidth(count);
        boolean inside = text + 8 < 2 * half;
        Color ink = inside ? palette.onAccent() : palette.text();
        graphics.setColor(ink);
        double x = inside ? middle(width) - text / 2 : middle(width) + half + 4;
        graphics.drawString(count, (float) x, top + 12);
        graphics.setColor(palette.text());
        graphics.drawString(step.word(), 0, top + 12);
    }

    private void share(Graphics2D graphics, Step from, Step to, int top, int width) {
        double share = (double) counts.get(to) / counts.get(from);
        String words = from.multiplies()
                ? String.format(Locale.ENGLISH, "%.1f per fruit", share)
                : Math.round(share * 100) + " % went on";
        graphics.setColor(palette.quiet());
        graphics.drawString(words, width - graphics.getFontMetrics().stringWidth(words), top + 12);
    }

    private double half(Step step, int width) {
        int most = counts.values().stream().mapToInt(Integer::intValue).max().orElse(1);
        double room = width - WORD_WIDTH - SHARE_WIDTH;
        return Math.max(1, room * counts.get(step) / Math.max(1, most) / 2);
    }

    private static double middle(int width) {
        return WORD_WIDTH + (width - WORD_WIDTH - SHARE_WIDTH) / 2.0;
    }
}
