package pippinry.model.ask;

/**
 * A figure with its doubt.
 *
 * @param middle the best single figure, a median unless said otherwise
 * @param low below which it lies with the chance (1 - certainty) / 2
 * @param high above which it lies with the same chance
 * @param certainty that it lies between them, such as 0.8
 */
public record Interval(double middle, double low, double high, double certainty) {

    public Interval {
        if (!(low <= high) || !(certainty >= 0 && certainty <= 1)) {
            throw new IllegalArgumentException("Not an interval: " + low + " to " + high + " at " + certainty);
        }
    }
}
