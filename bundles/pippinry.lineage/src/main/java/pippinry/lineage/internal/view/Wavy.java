package pippinry.lineage.internal.view;

import java.awt.Shape;
import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;

/** A wave along a line, for what is in doubt: it can be told without colour. */
final class Wavy {

    private static final double FLATNESS = 0.3;
    private static final double STEP = 1.5;
    private static final double HEIGHT = 2.4;
    private static final double LENGTH = 9;

    private final Path2D wave = new Path2D.Double();
    private double walked;
    private double x;
    private double y;

    private Wavy() {}

    static Shape along(Shape line) {
        Wavy wavy = new Wavy();
        PathIterator pieces = new FlatteningPathIterator(line.getPathIterator(null), FLATNESS);
        double[] point = new double[6];
        while (!pieces.isDone()) {
            if (pieces.currentSegment(point) == PathIterator.SEG_MOVETO) {
                wavy.start(point[0], point[1]);
            } else {
                wavy.go(point[0], point[1]);
            }
            pieces.next();
        }
        return wavy.wave;
    }

    private void start(double toX, double toY) {
        wave.moveTo(toX, toY);
        x = toX;
        y = toY;
    }

    private void go(double toX, double toY) {
        double length = Math.hypot(toX - x, toY - y);
        if (length == 0) {
            return;
        }
        double dx = (toX - x) / length;
        double dy = (toY - y) / length;
        for (double at = STEP - walked % STEP; at < length; at += STEP) {
            double aside = HEIGHT * Math.sin(2 * Math.PI * (walked + at) / LENGTH);
            wave.lineTo(x + dx * at - dy * aside, y + dy * at + dx * aside);
        }
        walked += length;
        x = toX;
        y = toY;
    }
}
