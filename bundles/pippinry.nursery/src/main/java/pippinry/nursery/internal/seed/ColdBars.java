package pippinry.nursery.internal.seed;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;
import pippinry.nursery.internal.work.Term;
import pippinry.panels.Palette;
import pippinry.panels.Picture;

/** Days of cold of each lot as a bar, over the band of what is usual and the line of what is aimed at. */
public final class ColdBars implements Picture {

    private static final int HEAD = 16;
    private static final int ROW = 20;
    private static final int BAR = 12;
    private static final int CODE_WIDTH = 70;
    private static final int WORDS_WIDTH = 130;

    private final List<ColdOfLot> lots;
    private final Palette palette = Palette.light();

    /** @param lots at least one */
    public ColdBars(List<ColdOfLot> lots) {
        this.lots = List.copyOf(lots);
    }

    public double aspect(int width) {
        return (double) (HEAD + lots.size() * ROW + 2) / width;
    }

    @Override
    public void paint(Graphics2D graphics, int width, int height) {
        graphics.setFont(graphics.getFont().deriveFont(9f));
        target(graphics, lots.get(0).target(), width, height);
        for (int i = 0; i < lots.size(); i++) {
            bar(graphics, lots.get(i), HEAD + i * ROW, width);
        }
    }

    private void target(Graphics2D graphics, Term target, int width, int height) {
        double low = x(target.low().orElse(target.typical()), width);
        double high = x(target.latest(), width);
        double aim = x(target.typical(), width);
        graphics.setColor(palette.soft());
        graphics.fill(new java.awt.geom.Rectangle2D.Double(low, HEAD - 4, high - low, height - HEAD + 3.0));
        graphics.setColor(palette.text());
        graphics.setStroke(new BasicStroke(1));
        graphics.draw(new Line2D.Double(aim, HEAD - 4, aim, height - 1.0));
        graphics.setColor(palette.quiet());
        String words = target.days() + " days";
        graphics.drawString(words, (float) aim - graphics.getFontMetrics().stringWidth(words) / 2f, HEAD - 6);
    }

    private void bar(Graphics2D graphics, ColdOfLot lot, int top, int width) {
        graphics.setColor(palette.text());
        graphics.drawString(lot.lot().code().text(), 0, top + BAR - 1);
        double end = x(lot.days(), width);
        graphics.setColor(palette.accent());
        graphics.fill(new RoundRectangle2D.Double(CODE_WIDTH, top + 1, Math.max(2, end - CODE_WIDTH), BAR - 2, 4, 4));
        graphics.setColor(palette.text());
        graphics.drawString(words(lot), width - WORDS_WIDTH + 8, top + BAR - 1);
    }

    private static String words(ColdOfLot lot) {
        long left = Math.round(lot.target().typical() - lot.days());
        return Math.round(lot.days()) + " days, " + (left > 0 ? left + " left" : "ready");
    }

    private double x(double days, int width) {
        double most = lots.stream().mapToDouble(ColdOfLot::days).max().orElse(0);
        double scale = Math.max(most, lots.get(0).target().latest()) * 1.02;
        return CODE_WIDTH + (width - CODE_WIDTH - WORDS_WIDTH) * Math.max(0, days) / scale;
    }
}
