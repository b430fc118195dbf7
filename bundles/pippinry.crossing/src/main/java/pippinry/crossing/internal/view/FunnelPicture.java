package pippinry.crossing.internal.view;

import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;
import java.util.Locale;
import pippinry.crossing.internal.plan.Funnel;
import pippinry.panels.Palette;
import pippinry.panels.Picture;

/** Bars from flowers to keepers; each as high as the root of its count, so that few can still be seen beside many. */
final class FunnelPicture implements Picture {

    private static final int BAR = 28;
    private static final int TEXT = 54;
    private static final float SMALLER = 2;
    private static final int LEAST = 3;

    private final List<Funnel.Stage> stages;
    private final Palette palette;

    FunnelPicture(Funnel funnel, Palette palette) {
        this.stages = funnel.stages();
        this.palette = palette;
    }

    String words() {
        StringBuilder words = new StringBuilder("Expected: ");
        stages.forEach(stage ->
                words.append(count(stage)).append(' ').append(stage.name()).append("; "));
        return words.toString();
    }

    @Override
    public void paint(Graphics2D graphics, int width, int height) {
        double step = width / (double) stages.size();
        double room = height - TEXT;
        double most = stages.stream().mapToDouble(Funnel.Stage::count).max().orElse(1);
        double[] heights = stages.stream()
                .mapToDouble(stage -> Math.max(LEAST, room * Math.sqrt(stage.count() / most)))
                .toArray();
        for (int i = 0; i + 1 < heights.length; i++) {
            join(graphics, step * i + step / 2, heights[i], step * (i + 1) + step / 2, heights[i + 1], room);
        }
        for (int i = 0; i < heights.length; i++) {
            double middle = step * i + step / 2;
            graphics.setColor(palette.accent());
            graphics.fill(
                    new RoundRectangle2D.Double(middle - BAR / 2.0, (room - heights[i]) / 2, BAR, heights[i], 4, 4));
            words(graphics, stages.get(i), middle, room);
        }
    }

    private void join(Graphics2D graphics, double x, double from, double nextX, double to, double room) {
        Path2D shape = new Path2D.Double();
        shape.moveTo(x + BAR / 2.0, (room - from) / 2);
        shape.lineTo(nextX - BAR / 2.0, (room - to) / 2);
        shape.lineTo(nextX - BAR / 2.0, (room + to) / 2);
        shape.lineTo(x + BAR / 2.0, (room + from) / 2);
        shape.closePath();
        graphics.setColor(palette.soft());
        graphics.fill(shape);
    }

    private void words(Graphics2D graphics, Funnel.Stage stage, double middle, double room) {
        FontMetrics metrics = graphics.getFontMetrics();
        String count = count(stage);
        graphics.setColor(palette.text());
        graphics.drawString(
                count, (float) (middle - metrics.stringWidth(count) / 2.0), (float) (room + metrics.getAscent() + 2));
        graphics.setColor(palette.quiet());
        Font usual = graphics.getFont();
        graphics.setFont(usual.deriveFont(usual.getSize2D() - SMALLER));
        double baseline = room + 2 * metrics.getHeight();
        for (String line : lines(stage.name())) {
            graphics.drawString(
                    line, (float) (middle - graphics.getFontMetrics().stringWidth(line) / 2.0), (float) baseline);
            baseline += graphics.getFontMetrics().getHeight();
        }
        graphics.setFont(usual);
    }

    /** Names of two or three words stand in two lines: the bars are close together. */
    private static String[] lines(String name) {
        int blank = name.lastIndexOf(' ');
        return blank < 0 ? new String[] {name} : new String[] {name.substring(0, blank), name.substring(blank + 1)};
    }

    private static String count(Funnel.Stage stage) {
        return String.format(
                Locale.ROOT,
                stage.count() < 10 && stage.count() != Math.rint(stage.count()) ? "%.1f" : "%.0f",
                stage.count());
    }
}
