package pippinry.crossing.internal.view;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import pippinry.crossing.internal.rank.RankedPair;
import pippinry.panels.Palette;
import pippinry.traits.Fertility;

/**
 * The square of possible pairs: seed parents down, pollen parents across. A cell tells the share of seedlings with every must
 * that loci decide, by number and by shade; fertility by a full, half or empty disc; and the days between the blooms.
 */
final class PairSquare extends JComponent {

    private static final long serialVersionUID = 1;
    private static final int CELL_WIDTH = 84;
    private static final int CELL_HEIGHT = 44;
    private static final int GAP = 4;
    private static final int LEFT = 92;
    private static final int TOP = 30;
    private static final int DISC = 11;

    private final transient Palette palette;
    private final transient Consumer<RankedPair> chosen;
    private transient PairTable table = PairTable.empty();
    private int row;
    private int column;

    PairSquare(Palette palette, Consumer<RankedPair> chosen) {
        this.palette = palette;
        this.chosen = chosen;
        setFocusable(true);
        addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                requestFocusInWindow();
                choose((event.getY() - TOP) / (CELL_HEIGHT + GAP), (event.getX() - LEFT) / (CELL_WIDTH + GAP));
            }
        });
        move("UP", -1, 0);
        move("DOWN", 1, 0);
        move("LEFT", 0, -1);
        move("RIGHT", 0, 1);
    }

    private void move(String key, int rows, int columns) {
        getInputMap().put(KeyStroke.getKeyStroke(key), key);
        getActionMap().put(key, new AbstractAction() {
            private static final long serialVersionUID = 1;

            @Override
            public void actionPerformed(ActionEvent event) {
                choose(row + rows, column + columns);
            }
        });
    }

    void show(PairTable next) {
        table = next;
        next.placeOf(next.best()).ifPresent(place -> {
            row = place[0];
            column = place[1];
        });
        revalidate();
        repaint();
    }

    Optional<RankedPair> marked() {
        return table.pair(row, column);
    }

    void choose(int atRow, int atColumn) {
        if (atRow < 0
                || atColumn < 0
                || atRow >= table.seeds().size()
                || atColumn >= table.pollens().size()) {
            return;
        }
        row = atRow;
        column = atColumn;
        scrollRectToVisible(cell(row, column));
        repaint();
        marked().ifPresent(chosen);
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(
                LEFT + table.pollens().size() * (CELL_WIDTH + GAP),
                TOP + table.seeds().size() * (CELL_HEIGHT + GAP));
    }

    private static Rectangle cell(int row, int column) {
        return new Rectangle(
                LEFT + column * (CELL_WIDTH + GAP), TOP + row * (CELL_HEIGHT + GAP), CELL_WIDTH, CELL_HEIGHT);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D own = (Graphics2D) graphics.create();
        own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        own.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        own.setFont(getFont());
        headers(own);
        for (int r = 0; r < table.seeds().size(); r++) {
            for (int c = 0; c < table.pollens().size(); c++) {
                if (own.hitClip(cell(r, c).x, cell(r, c).y, CELL_WIDTH, CELL_HEIGHT)) {
                    paint(own, r, c);
                }
            }
        }
        own.dispose();
    }

    private void headers(Graphics2D graphics) {
        graphics.setColor(palette.text());
        FontMetrics metrics = graphics.getFontMetrics();
        List<String> pollens = table.pollens();
        for (int c = 0; c < pollens.size(); c++) {
            Rectangle cell = cell(0, c);
            String name = fitted(pollens.get(c), metrics, CELL_WIDTH);
            graphics.drawString(name, cell.x + (CELL_WIDTH - metrics.stringWidth(name)) / 2, TOP - 10);
        }
        for (int r = 0; r < table.seeds().size(); r++) {
            Rectangle cell = cell(r, 0);
            String name = fitted(table.seeds().get(r), metrics, LEFT - 10);
            graphics.drawString(
                    name, LEFT - 8 - metrics.stringWidth(name), cell.y + CELL_HEIGHT / 2 + metrics.getAscent() / 2);
        }
    }

    private void paint(Graphics2D graphics, int r, int c) {
        Rectangle cell = cell(r, c);
        RoundRectangle2D shape = new RoundRectangle2D.Double(cell.x, cell.y, cell.width, cell.height, 6, 6);
        Optional<RankedPair> pair = table.pair(r, c);
        double share = pair.map(known -> known.share().orElse(0)).orElse(0.0);
        Color ground = pair.isEmpty() ? palette.ground() : palette.shade(0.08 + 0.55 * share);
        graphics.setColor(ground);
        graphics.fill(shape);
        pair.ifPresent(known -> contents(graphics, cell, known, Palette.inkOn(ground)));
        if (r == row && c == column) {
            graphics.setColor(palette.text());
            graphics.setStroke(new BasicStroke(2));
            graphics.draw(shape);
        }
    }

    private static void contents(Graphics2D graphics, Rectangle cell, RankedPair pair, Color ink) {
        FontMetrics metrics = graphics.getFontMetrics();
        graphics.setColor(ink);
        graphics.drawString(shareWords(pair), cell.x + 8, cell.y + 4 + metrics.getAscent());
        graphics.drawString(bloomWords(pair), cell.x + 8, cell.y + cell.height - 7);
        disc(graphics, pair.compatibility().fertility(), cell.x + cell.width - DISC - 7, cell.y + 7);
    }

    private static String shareWords(RankedPair pair) {
        if (pair.compatibility().fertility() == Fertility.NONE) {
            return "none";
        }
        return pair.share().isPresent()
                ? String.format(Locale.ROOT, "%.0f %%", pair.share().getAsDouble() * 100)
                : "not known";
    }

    private static String bloomWords(RankedPair pair) {
        if (pair.bloomGapDays().isEmpty()) {
            return "bloom ?";
        }
        long days = Math.round(pair.bloomGapDays().get().middle());
        return days == 0 ? "same time" : Math.abs(days) + (days > 0 ? " d later" : " d earlier");
    }

    /** Full, half, empty, or a question mark: shape tells it, not colour. */
    private static void disc(Graphics2D graphics, Fertility fertility, int x, int y) {
        graphics.setStroke(new BasicStroke(1.4f));
        switch (fertility) {
            case FULL -> graphics.fill(new Ellipse2D.Double(x, y, DISC, DISC));
            case HALF -> {
                graphics.draw(new Ellipse2D.Double(x, y, DISC, DISC));
                graphics.fill(new Arc2D.Double(x, y, DISC, DISC, 90, 180, Arc2D.CHORD));
            }
            case NONE -> graphics.draw(new Ellipse2D.Double(x, y, DISC, DISC));
            default -> graphics.drawString("?", x + 2, y + DISC);
        }
    }

    private static String fitted(String text, FontMetrics metrics, int width) {
        String fitted = text;
        while (fitted.length() > 2 && metrics.stringWidth(fitted) > width) {
            fitted = fitted.substring(0, fitted.length() - 2) + "…";
        }
        return fitted;
    }
}
