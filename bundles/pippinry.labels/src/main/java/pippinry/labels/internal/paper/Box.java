package pippinry.labels.internal.paper;

/** A rectangle on paper in millimetres, x to the right and y down from the top left corner of page or label. */
public record Box(double x, double y, double width, double height) {
    private static final double HAIR = 1e-6;

    public Box {
        if (!(width >= 0) || !(height >= 0) || !Double.isFinite(x + y + width + height)) {
            throw new IllegalArgumentException("Not a box in mm: " + x + " " + y + " " + width + " " + height);
        }
    }

    public double right() {
        return x + width;
    }

    public double bottom() {
        return y + height;
    }

    public Box shiftedBy(double right, double down) {
        return new Box(x + right, y + down, width, height);
    }

    /** The box left when this much is taken off every side, never less than nothing. */
    public Box inset(double margin) {
        return new Box(x + margin, y + margin, Math.max(0, width - 2 * margin), Math.max(0, height - 2 * margin));
    }

    /** The part from this many mm below the top. */
    public Box below(double taken) {
        return new Box(x, y + Math.min(taken, height), width, Math.max(0, height - taken));
    }

    /** The part from this many mm right of the left side. */
    public Box rightOf(double taken) {
        return new Box(x + Math.min(taken, width), y, Math.max(0, width - taken), height);
    }

    /** True when the other lies wholly within, touching sides allowed. */
    public boolean holds(Box other) {
        return other.x >= x - HAIR
                && other.y >= y - HAIR
                && other.right() <= right() + HAIR
                && other.bottom() <= bottom() + HAIR;
    }
}
