package pippinry.lineage.internal.view;

import java.awt.Dimension;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/**
 * How much of a chart is seen, and how large.
 *
 * @param zoom pixels for each unit of the chart
 * @param x of the chart's point that lies in the left upper corner of the view
 */
record Lens(double zoom, double x, double y) {

    private static final double SMALLEST = 0.05;
    private static final double LARGEST = 3;
    private static final int MARGIN = 16;

    static Lens plain() {
        return new Lens(1, -MARGIN, -MARGIN);
    }

    /** The whole chart in the middle of the view, but never larger than it is read best. */
    static Lens fitting(double width, double height, Dimension view) {
        double zoom = Math.min(1, Math.min((view.width - 2.0 * MARGIN) / width, (view.height - 2.0 * MARGIN) / height));
        double fit = Math.max(SMALLEST, zoom);
        return new Lens(fit, (width - view.width / fit) / 2, (height - view.height / fit) / 2);
    }

    Point2D toChart(double viewX, double viewY) {
        return new Point2D.Double(x + viewX / zoom, y + viewY / zoom);
    }

    /** Makes everything larger or smaller; what lies under the point of the view stays there. */
    Lens zoomed(double factor, double viewX, double viewY) {
        double next = Math.max(SMALLEST, Math.min(LARGEST, zoom * factor));
        Point2D still = toChart(viewX, viewY);
        return new Lens(next, still.getX() - viewX / next, still.getY() - viewY / next);
    }

    /** @param viewDx how many pixels the chart moves to the right */
    Lens moved(double viewDx, double viewDy) {
        return new Lens(zoom, x - viewDx / zoom, y - viewDy / zoom);
    }

    /** Moves just as far as is needed to see all of the rectangle of the chart. */
    Lens revealing(Rectangle2D part, Dimension view) {
        double margin = MARGIN / zoom;
        double left = reveal(x, view.width / zoom, part.getMinX() - margin, part.getMaxX() + margin);
        double top = reveal(y, view.height / zoom, part.getMinY() - margin, part.getMaxY() + margin);
        return new Lens(zoom, left, top);
    }

    private static double reveal(double start, double length, double from, double to) {
        if (from < start) {
            return from;
        }
        return to > start + length ? to - length : start;
    }
}
