package pippinry.statistics.proportions;

import java.util.function.LongToDoubleFunction;

/** Adds up the first terms of a distribution, each from the one before, without overflow or underflow. */
final class TermSum {

    private static final double LARGE = 1e200;
    private static final double LOG_LARGE = Math.log(LARGE);

    private TermSum() {}

    /**
     * The sum of the first terms.
     *
     * @param logFirst natural logarithm of the first term
     * @param terms how many
     * @param next factor from the term at this place to the next, not negative
     */
    static double of(double logFirst, long terms, LongToDoubleFunction next) {
        double log = logFirst;
        double sum = 0;
        double term = 1;
        for (long j = 0; j < terms; j++) {
            sum += term;
            term *= next.applyAsDouble(j);
            if (sum > LARGE || term > LARGE) {
                sum /= LARGE;
                term /= LARGE;
                log += LOG_LARGE;
            }
        }
        return Math.min(1, Math.exp(log + Math.log(sum)));
    }
}
