package pippinry.labels.internal.paper;

/** The grid of a printer. Codes are drawn on it, so that every module is the same whole number of dots. */
public record Dots(int perInch) {
    private static final double MM_PER_INCH = 25.4;
    private static final double HAIR = 1e-6;

    public Dots {
        if (perInch < 100 || perInch > 2400) {
            throw new IllegalArgumentException("A printer has 100 to 2400 dots per inch, not " + perInch);
        }
    }

    public double mm(int dots) {
        return dots * MM_PER_INCH / perInch;
    }

    /** The most whole dots that fit into so many mm. */
    public int within(double mm) {
        return (int) Math.floor(mm * perInch / MM_PER_INCH + HAIR);
    }

    /** The fewest whole dots that are no less than so many mm. */
    public int covering(double mm) {
        return (int) Math.ceil(mm * perInch / MM_PER_INCH - HAIR);
    }

    /** The place on the grid nearest to a place in mm. */
    public double nearest(double mm) {
        return Math.round(mm * perInch / MM_PER_INCH) * MM_PER_INCH / perInch;
    }
}
