package pippinry.statistics.proportions;

/** Adds up numbers given by their logarithms, without overflow or underflow. */
final class LogSum {

    private double largest = Double.NEGATIVE_INFINITY;
    private double scaled;

    void add(double log) {
        if (log <= largest) {
            scaled += largest == Double.NEGATIVE_INFINITY ? 0 : Math.exp(log - largest);
        } else {
            scaled = scaled * Math.exp(largest - log) + 1;
            largest = log;
        }
    }

    double value() {
        return scaled * Math.exp(largest);
    }
}
