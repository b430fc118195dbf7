package pippinry.statistics.proportions;

import org.hipparchus.distribution.continuous.BetaDistribution;
import org.hipparchus.special.Beta;
import org.hipparchus.special.Gamma;

/**
 * A belief about a share, held as a beta distribution: as strong as having seen {@code a} successes and {@code b}
 * failures. Counts to come are beta-binomial.
 *
 * <p>Updating by counts is exact (conjugate). Quantiles invert the incomplete beta function by bisection to the last
 * bit that matters.
 *
 * @param a more than 0
 * @param b more than 0
 */
public record BetaBelief(double a, double b) implements Share {

    public static final BetaBelief UNIFORM = new BetaBelief(1, 1);

    public BetaBelief {
        if (!(a > 0 && b > 0) || Double.isInfinite(a) || Double.isInfinite(b)) {
            throw new IllegalArgumentException("A beta distribution needs two positive numbers, not " + a + ", " + b);
        }
    }

    /** The beta distribution of this mean and variance; a variance too large for the mean is cut to a + b = 1. */
    public static BetaBelief ofMoments(double mean, double variance) {
        if (!(mean > 0 && mean < 1 && variance > 0)) {
            throw new IllegalArgumentException(
                    "A mean between 0 and 1 and a positive variance are needed, not " + mean + ", " + variance);
        }
        double strength = Math.max(1, mean * (1 - mean) / variance - 1);
        return new BetaBelief(mean * strength, (1 - mean) * strength);
    }

    /** What is believed after seeing some more trials. */
    public BetaBelief seeing(double successes, double failures) {
        if (!(successes >= 0 && failures >= 0)) {
            throw new IllegalArgumentException("Counts are not negative: " + successes + ", " + failures);
        }
        return new BetaBelief(a + successes, b + failures);
    }

    @Override
    public double mean() {
        return a / (a + b);
    }

    public double variance() {
        return a * b / ((a + b) * (a + b) * (a + b + 1));
    }

    /** How many trials the belief is worth. */
    public double strength() {
        return a + b;
    }

    /** The most likely share; only when a and b are both more than 1. */
    public double mode() {
        if (a <= 1 || b <= 1) {
            throw new IllegalStateException("Beta(" + a + ", " + b + ") has no single top inside 0 to 1");
        }
        return (a - 1) / (a + b - 2);
    }

    /** Probability that the share is at most {@code x}. */
    public double atMost(double x) {
        return x <= 0 ? 0 : x >= 1 ? 1 : Beta.regularizedBeta(x, a, b);
    }

    /** Probability that the share is more than {@code x}. */
    public double above(double x) {
        return x <= 0 ? 1 : x >= 1 ? 0 : Beta.regularizedBeta(1 - x, b, a);
    }

    /** The share below which the given part of the belief lies. */
    public double quantile(double probability) {
        if (!(probability >= 0 && probability <= 1)) {
            throw new IllegalArgumentException("A probability lies between 0 and 1, not " + probability);
        }
        double low = 0;
        double high = 1;
        while (true) {
            double middle = (low + high) / 2;
            if (middle == low || middle == high) {
                return middle;
            }
            if (atMost(middle) < probability) {
                low = middle;
            } else {
                high = middle;
            }
        }
    }

    /** The middle part of the belief: as much below as above. */
    public Interval central(double probability) {
        double tail = (1 - probability) / 2;
        return new Interval(quantile(tail), quantile(1 - tail));
    }

    /** The shortest interval with the given probability; it ends at 0 or 1 where the density rises to there. */
    public Interval shortest(double probability) {
        if (a <= 1 && b <= 1) {
            throw new IllegalStateException("Beta(" + a + ", " + b + ") has no shortest interval in one piece");
        }
        if (b <= 1) {
            return new Interval(quantile(1 - probability), 1);
        }
        return a <= 1 ? new Interval(0, quantile(probability)) : shortestInside(probability);
    }

    /** At the ends of the shortest interval the density is the same; that point is found by bisection. */
    private Interval shortestInside(double probability) {
        BetaDistribution density = new BetaDistribution(a, b);
        double low = 0;
        double high = 1 - probability;
        for (int i = 0; i < 60; i++) {
            double below = (low + high) / 2;
            if (density.logDensity(quantile(below)) < density.logDensity(quantile(below + probability))) {
                low = below;
            } else {
                high = below;
            }
        }
        return new Interval(quantile(low), quantile(low + probability));
    }

    /** Probability of exactly {@code successes} among the next {@code trials}. */
    public double next(long successes, long trials) {
        if (successes < 0 || successes > trials) {
            return 0;
        }
        double ways = Gamma.logGamma(trials + 1.0)
                - Gamma.logGamma(successes + 1.0)
                - Gamma.logGamma(trials - successes + 1.0);
        return Math.exp(ways + Beta.logBeta(a + successes, b + trials - successes) - Beta.logBeta(a, b));
    }

    @Override
    public double fewerThan(long least, long trials) {
        if (least <= 0) {
            return 0;
        }
        if (least > trials) {
            return 1;
        }
        double first = Beta.logBeta(a, b + trials) - Beta.logBeta(a, b);
        return TermSum.of(first, least, j -> (trials - j) / (j + 1.0) * ((a + j) / (b + trials - j - 1)));
    }

    @Override
    public double ceiling(long least) {
        return 1;
    }

    /**
     * The belief about the product of two independent shares, as the beta distribution with the product's mean and
     * variance.
     *
     * <p>Fan, D.-Y. 1991. The distribution of the product of independent beta variables. Communications in Statistics -
     * Theory and Methods 20:4043-4052. (From memory, not looked up; the error is measured in the tests.)
     */
    public BetaBelief times(BetaBelief other) {
        double mean = mean() * other.mean();
        double square = square() * other.square();
        return ofMoments(mean, square - mean * mean);
    }

    private double square() {
        return a * (a + 1) / ((a + b) * (a + b + 1));
    }
}
