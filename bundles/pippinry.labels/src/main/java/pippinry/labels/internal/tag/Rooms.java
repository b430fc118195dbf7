package pippinry.labels.internal.tag;

import pippinry.labels.internal.paper.Box;

/**
 * A label shared out: where the code with its quiet zone stands, and what is left for text. With a shared room the number
 * stands above the small text in it.
 */
record Rooms(Box code, Box number, Box small, boolean shared) {

    static Rooms of(Arrangement arrangement, Box label, CodeSize code) {
        return new Sharing(label, code).by(arrangement);
    }

    /** White at the edge of a label in mm: 2 on large labels, less on small ones. */
    static double margin(Box label) {
        return Math.min(2, 0.06 * Math.min(label.width(), label.height()));
    }

    private static final class Sharing {
        private static final double TEXT_TO_CODE = 1.2;

        /** A quiet zone may use most of the label's margin, since both are white. */
        private static final double QUIET_MARGIN = 0.3;

        private final Box inner;
        private final Box outer;
        private final CodeSize code;

        Sharing(Box label, CodeSize code) {
            this.inner = label.inset(margin(label));
            this.outer = label.inset(margin(label) * QUIET_MARGIN);
            this.code = code;
        }

        Rooms by(Arrangement arrangement) {
            return switch (arrangement) {
                case BESIDE -> beside();
                case BELOW -> below();
                case STACKED -> stacked();
                case FOOT -> foot();
                case TEXT -> new Rooms(new Box(0, 0, 0, 0), inner, inner, true);
            };
        }

        private Rooms beside() {
            Box place = placed(left(), middle(inner.y(), inner.height(), code.height()));
            Box text = inner.rightOf(place.right() + gap(code.quietBeside()) - inner.x());
            return new Rooms(place, text, text, true);
        }

        private Rooms below() {
            Box place = placed(left(), foot(code.height()));
            Box beside = inner.rightOf(place.right() + gap(code.quietBeside()) - inner.x());
            double dark = place.y() + code.quietAbove();
            return new Rooms(place, above(place), beside.below(dark - inner.y()), false);
        }

        private Rooms stacked() {
            Box place = placed(middle(inner.x(), inner.width(), code.width()), head());
            Box text = inner.below(place.bottom() + gap(code.quietAbove()) - inner.y());
            return new Rooms(place, text, text, true);
        }

        private Rooms foot() {
            Box place = placed(middle(inner.x(), inner.width(), code.width()), foot(code.height()));
            return new Rooms(place, above(place), above(place), true);
        }

        private Box above(Box place) {
            double height = place.y() - gap(code.quietAbove()) - inner.y();
            return new Box(inner.x(), inner.y(), inner.width(), Math.max(0, height));
        }

        private double left() {
            return Math.max(outer.x(), inner.x() - code.quietBeside());
        }

        private double head() {
            return Math.max(outer.y(), inner.y() - code.quietAbove());
        }

        private double foot(double height) {
            return Math.min(outer.bottom(), inner.bottom() + code.quietAbove()) - height;
        }

        private static double middle(double from, double room, double taken) {
            return from + (room - taken) / 2;
        }

        private Box placed(double x, double y) {
            return new Box(x, y, code.width(), code.height());
        }

        private static double gap(double quiet) {
            return Math.max(0.2, TEXT_TO_CODE - quiet);
        }
    }

    /** True when the code lies on the label with its whole quiet zone. */
    boolean codeFits(Box label) {
        return label.inset(margin(label) * Sharing.QUIET_MARGIN).holds(code);
    }
}
