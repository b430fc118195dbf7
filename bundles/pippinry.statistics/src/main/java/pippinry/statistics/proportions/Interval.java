package pippinry.statistics.proportions;

/** A stretch of values from low to high. */
public record Interval(double low, double high) {
    public Interval {
        if (!(low <= high)) {
            throw new IllegalArgumentException("An interval runs from low to high, not from " + low + " to " + high);
        }
    }

    public boolean holds(double value) {
        return value >= low && value <= high;
    }
}
