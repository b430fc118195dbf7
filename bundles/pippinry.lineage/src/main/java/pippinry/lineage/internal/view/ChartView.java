package pippinry.lineage.internal.view;

import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.KeyStroke;
import pippinry.lineage.internal.chart.Card;
import pippinry.lineage.internal.chart.LaidOut;
import pippinry.lineage.internal.chart.Place;
import pippinry.panels.Drawn;
import pippinry.panels.Palette;

/**
 * The chart on the screen: the wheel makes it larger and smaller, dragging moves it, arrow keys go from card to card, Enter or
 * a click selects, Space or a double click opens a family or puts a genotype in the middle.
 */
final class ChartView extends Drawn {

    private static final long serialVersionUID = 1;
    private static final double STEP = 1.2;

    private final transient Palette palette;
    private final transient Consumer<Card> chosen;
    private final transient Consumer<Card> opened;
    private transient LaidOut chart = LaidOut.empty();
    private transient Lens lens = Lens.plain();
    private transient Optional<String> selected = Optional.empty();
    private transient Optional<String> marked = Optional.empty();
    private boolean fitting = true;

    ChartView(Palette palette, Consumer<Card> chosen, Consumer<Card> opened) {
        this.palette = palette;
        this.chosen = chosen;
        this.opened = opened;
        setFocusable(true);
        setPreferredSize(new Dimension(480, 420));
        setToolTipText("");
        Hands hands = new Hands();
        addMouseListener(hands);
        addMouseMotionListener(hands);
        addMouseWheelListener(hands);
        keys();
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        super.setBounds(x, y, width, height);
        refit();
    }

    private void keys() {
        bind("LEFT", () -> go(-1, 0));
        bind("RIGHT", () -> go(1, 0));
        bind("UP", () -> go(0, -1));
        bind("DOWN", () -> go(0, 1));
        bind("ENTER", () -> markedCard().ifPresent(chosen));
        bind("SPACE", () -> markedCard().ifPresent(opened));
        bind("HOME", this::fit);
        bind("PLUS", () -> zoom(STEP));
        bind("ADD", () -> zoom(STEP));
        bind("EQUALS", () -> zoom(STEP));
        bind("MINUS", () -> zoom(1 / STEP));
        bind("SUBTRACT", () -> zoom(1 / STEP));
    }

    private void bind(String key, Runnable work) {
        getInputMap().put(KeyStroke.getKeyStroke(key), key);
        getActionMap().put(key, new AbstractAction() {
            private static final long serialVersionUID = 1;

            @Override
            public void actionPerformed(ActionEvent event) {
                work.run();
            }
        });
    }

    /** @param stay whether what is seen stays where it is, as when a family was opened */
    void show(LaidOut next, boolean stay) {
        Optional<Place> before = marked.map(chart.places()::get);
        chart = next;
        marked = marked.filter(chart.places()::containsKey);
        Optional<Place> after = marked.map(chart.places()::get);
        if (stay && before.isPresent() && after.isPresent()) {
            lens = lens.moved(
                    (before.get().x() - after.get().x()) * lens.zoom(),
                    (before.get().y() - after.get().y()) * lens.zoom());
        } else {
            fitting = true;
            refit();
        }
        tell(words());
        repaint();
    }

    private String words() {
        return chart.chart().cards().size() + " cards, parents to the left of their children";
    }

    LineagePicture picture(Palette colours) {
        return new LineagePicture(chart, colours, selected, Optional.empty());
    }

    LaidOut chart() {
        return chart;
    }

    void select(Optional<String> number, Optional<String> card) {
        selected = number;
        marked = card.or(() -> marked);
        reveal();
        repaint();
    }

    /** The whole chart, also when the panel changes its size. */
    void fit() {
        fitting = true;
        refit();
    }

    private void refit() {
        if (fitting && chart != null && getWidth() > 0) {
            lens = Lens.fitting(chart.width(), chart.height(), getSize());
            repaint();
        }
    }

    void zoom(double factor) {
        fitting = false;
        lens = lens.zoomed(factor, getWidth() / 2.0, getHeight() / 2.0);
        repaint();
    }

    private Optional<Card> markedCard() {
        return marked.flatMap(chart.chart()::card);
    }

    private void go(int right, int down) {
        Optional<Card> from =
                markedCard().or(() -> chart.chart().cards().stream().findFirst());
        from.flatMap(card -> chart.next(card, right, down)).or(() -> from).ifPresent(card -> {
            marked = Optional.of(card.id());
            reveal();
            repaint();
        });
    }

    private void reveal() {
        marked.map(chart.places()::get).ifPresent(place -> {
            if (!fitting) {
                lens = lens.revealing(
                        new Rectangle2D.Double(place.x(), place.y(), place.width(), place.height()), getSize());
            }
        });
    }

    private Optional<Card> at(Point point) {
        Point2D there = lens.toChart(point.x, point.y);
        return chart.at(there.getX(), there.getY());
    }

    @Override
    public String getToolTipText(MouseEvent event) {
        return at(event.getPoint())
                .map(card -> card.doubts().isEmpty()
                        ? card.title() + ", " + card.subtitle()
                        : String.join("; ", card.doubts()))
                .orElse(null);
    }

    @Override
    protected void draw(Graphics2D graphics) {
        graphics.clipRect(0, 0, getWidth(), getHeight());
        graphics.scale(lens.zoom(), lens.zoom());
        graphics.translate(-lens.x(), -lens.y());
        Optional<String> focus = isFocusOwner() ? marked : Optional.empty();
        new LineagePicture(chart, palette, selected, focus).draw(graphics, lens.zoom());
    }

    /** What a mouse does. */
    private final class Hands extends MouseAdapter {

        private Point from = new Point();

        @Override
        public void mousePressed(MouseEvent event) {
            requestFocusInWindow();
            from = event.getPoint();
        }

        @Override
        public void mouseDragged(MouseEvent event) {
            fitting = false;
            setCursor(Cursor.getPredefinedCursor(Cursor.MOVE_CURSOR));
            lens = lens.moved(event.getX() - from.x, event.getY() - from.y);
            from = event.getPoint();
            repaint();
        }

        @Override
        public void mouseReleased(MouseEvent event) {
            setCursor(Cursor.getDefaultCursor());
        }

        @Override
        public void mouseClicked(MouseEvent event) {
            at(event.getPoint()).ifPresent(card -> {
                marked = Optional.of(card.id());
                (event.getClickCount() == 2 ? opened : chosen).accept(card);
                repaint();
            });
        }

        @Override
        public void mouseWheelMoved(MouseWheelEvent event) {
            fitting = false;
            lens = lens.zoomed(Math.pow(STEP, -event.getPreciseWheelRotation()), event.getX(), event.getY());
            repaint();
        }
    }
}
