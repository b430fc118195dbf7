package pippinry.panels;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.Scrollable;

/** Stands at the top of a scroll pane, always as wide as that, so that text wraps. */
final class WidthOfViewport extends JPanel implements Scrollable {

    private static final long serialVersionUID = 1;
    private static final int LINE = 24;

    WidthOfViewport(JComponent view) {
        super(new BorderLayout());
        setOpaque(false);
        add(view, BorderLayout.NORTH);
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return LINE;
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return visible.height - LINE;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return false;
    }
}
