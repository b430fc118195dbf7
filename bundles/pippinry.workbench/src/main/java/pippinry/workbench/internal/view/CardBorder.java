package pippinry.workbench.internal.view;

import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Insets;
import java.awt.RenderingHints;
import java.awt.geom.Area;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import javax.swing.border.AbstractBorder;
import pippinry.panels.Palette;

/** The rounded edge of a card that lies on the ground. */
final class CardBorder extends AbstractBorder {

    private static final long serialVersionUID = 1;
    private static final int ARC = 10;
    private static final int INSET = 3;

    private final Color ground;
    private final Color card;
    private final Color line;

    CardBorder(Palette palette) {
        ground = palette.ground();
        card = palette.card();
        line = palette.line();
    }

    @Override
    public Insets getBorderInsets(Component component, Insets insets) {
        insets.set(INSET, INSET, INSET, INSET);
        return insets;
    }

    @Override
    public void paintBorder(Component component, Graphics graphics, int x, int y, int width, int height) {
        Graphics2D own = (Graphics2D) graphics.create();
        own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        own.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        Rectangle2D whole = new Rectangle2D.Double(x, y, width, height);
        Area frame = new Area(whole);
        frame.subtract(
                new Area(new Rectangle2D.Double(x + INSET, y + INSET, width - 2.0 * INSET, height - 2.0 * INSET)));
        own.clip(frame);
        own.setColor(ground);
        own.fill(whole);
        RoundRectangle2D edge = new RoundRectangle2D.Double(x + 0.5, y + 0.5, width - 1.0, height - 1.0, ARC, ARC);
        own.setColor(card);
        own.fill(edge);
        own.setColor(line);
        own.draw(edge);
        own.dispose();
    }
}
