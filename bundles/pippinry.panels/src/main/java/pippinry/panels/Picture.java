package pippinry.panels;

import java.awt.Graphics2D;

/**
 * Something drawn: the same on the screen, in a PNG, in a PDF and in the season book.
 *
 * <p>It is painted with what {@link Graphics2D} offers everywhere: no component, no screen.
 */
@FunctionalInterface
public interface Picture {

    /** Paints into the rectangle from 0, 0 to width, height, in points of 1/72 inch on paper, pixels on a screen. */
    void paint(Graphics2D graphics, int width, int height);
}
