package pippinry.season.internal.due;

import java.awt.BasicStroke;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import pippinry.panels.Palette;
import pippinry.panels.Picture;

/** Bars from the first to the last useful day of each open task, one under the other, over the weeks. */
public final class DueBars implements Picture {

    private static final int MOST = 32;
    private static final int ROW = 14;
    private static final int HEAD = 22;
    private static final int BATCH_WIDTH = 66;
    private static final int PAST_DAYS = 14;
    private static final int PAPER_WIDTH = 483;
    private static final int LEAST_BAR = 3;

    private final DueList list;
    private final List<Entry> entries;
    private final LocalDate start;
    private final Palette palette = Palette.light();

    public DueBars(DueList list) {
        this.list = list;
        this.entries = list.open().stream().limit(MOST).toList();
        this.start = list.today().minusDays(PAST_DAYS);
    }

    /** Height as a share of the width of the printed page. */
    public double aspect() {
        return (double) (HEAD + entries.size() * ROW + (list.open().size() > MOST ? ROW : 4)) / PAPER_WIDTH;
    }

    @Override
    public void paint(Graphics2D graphics, int width, int height) {
        graphics.setFont(graphics.getFont().deriveFont(8f));
        weeks(graphics, width, height);
        for (int i = 0; i < entries.size(); i++) {
            bar(graphics, entries.get(i), HEAD + i * ROW, width);
        }
        today(graphics, width, height);
        int more = list.open().size() - entries.size();
        if (more > 0) {
            graphics.setColor(palette.quiet());
            graphics.drawString("and " + more + " more", 0, HEAD + entries.size() * ROW + 10);
        }
    }

    private void weeks(Graphics2D graphics, int width, int height) {
        FontMetrics metrics = graphics.getFontMetrics();
        graphics.setStroke(new BasicStroke(0.5f));
        for (LocalDate week = start; !week.isAfter(list.to()); week = week.plusWeeks(1)) {
            double x = x(week, width);
            graphics.setColor(palette.line());
            graphics.draw(new Line2D.Double(x, HEAD - 4, x, height - 1.0));
            String text = Words.shortDay(week);
            if (x + metrics.stringWidth(text) <= width) {
                graphics.setColor(palette.quiet());
                graphics.drawString(text, (float) x, HEAD - 9);
            }
        }
    }

    private void bar(Graphics2D graphics, Entry entry, int top, int width) {
        double left = Math.min(x(max(entry.task().due(), start), width), width - LEAST_BAR - 1.0);
        double right = x(min(entry.task().until().plusDays(1), list.to()), width);
        boolean late = entry.status() == Status.OVERDUE;
        if (late) {
            right = x(list.today(), width);
        }
        RoundRectangle2D shape =
                new RoundRectangle2D.Double(left, top + 2, Math.max(LEAST_BAR, right - left), ROW - 4, 4, 4);
        graphics.setColor(late ? palette.card() : entry.status() == Status.DUE ? palette.accent() : palette.soft());
        graphics.fill(shape);
        if (late) {
            hatch(graphics, shape);
        }
        graphics.setStroke(new BasicStroke(0.7f));
        graphics.setColor(late ? palette.warning() : palette.accent());
        graphics.draw(shape);
        label(graphics, entry, top, shape, width);
    }

    private void hatch(Graphics2D graphics, RoundRectangle2D shape) {
        graphics.setColor(palette.warning());
        graphics.setStroke(new BasicStroke(0.7f));
        Rectangle2D box = shape.getBounds2D();
        for (double x = box.getMinX() + 3; x < box.getMaxX(); x += 5) {
            double end = Math.min(x + 4, box.getMaxX());
            graphics.draw(new Line2D.Double(x, box.getMaxY() - 1, end, box.getMinY() + 1));
        }
    }

    /** The batch before the bars; the words behind or inside the bar, wherever there is room. */
    private void label(Graphics2D graphics, Entry entry, int top, RoundRectangle2D bar, int width) {
        FontMetrics metrics = graphics.getFontMetrics();
        int baseline = top + ROW - 4;
        graphics.setColor(palette.text());
        graphics.drawString(fit(entry.task().batch(), BATCH_WIDTH - 6, metrics), 0, baseline);
        double behind = width - bar.getMaxX() - 6;
        double inside = bar.getWidth() - 6;
        if (behind >= inside || entry.status() == Status.OVERDUE) {
            graphics.drawString(fit(entry.task().text(), behind, metrics), (float) bar.getMaxX() + 4, baseline);
        } else {
            graphics.setColor(entry.status() == Status.DUE ? palette.onAccent() : palette.text());
            graphics.drawString(fit(entry.task().text(), inside, metrics), (float) bar.getMinX() + 3, baseline);
        }
    }

    private void today(Graphics2D graphics, int width, int height) {
        double x = x(list.today(), width);
        graphics.setColor(palette.text());
        graphics.setStroke(new BasicStroke(1.2f));
        graphics.draw(new Line2D.Double(x, HEAD - 4, x, height - 1.0));
    }

    private static String fit(String text, double width, FontMetrics metrics) {
        if (metrics.stringWidth(text) <= width) {
            return text;
        }
        int end = text.length();
        while (end > 0 && metrics.stringWidth(text.substring(0, end) + "…") > width) {
            end = text.offsetByCodePoints(end, -1);
        }
        return end == 0 ? "" : text.substring(0, end).stripTrailing() + "…";
    }

    private double x(LocalDate day, int width) {
        double share = (double) ChronoUnit.DAYS.between(start, day) / ChronoUnit.DAYS.between(start, list.to());
        return BATCH_WIDTH + share * (width - BATCH_WIDTH - 1);
    }

    private static LocalDate max(LocalDate one, LocalDate other) {
        return one.isAfter(other) ? one : other;
    }

    private static LocalDate min(LocalDate one, LocalDate other) {
        return one.isBefore(other) ? one : other;
    }
}
