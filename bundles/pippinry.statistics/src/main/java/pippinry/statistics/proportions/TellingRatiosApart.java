package pippinry.statistics.proportions;

import java.util.OptionalInt;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;

/**
 * How many plants tell one share of a class from another, exactly.
 *
 * <p>There must be a cut-off such that the smaller share is mistaken for the larger, and the larger for the smaller, each
 * with at most the allowed probability; found by going up in n and, for each n, taking the lowest cut-off that
 * suits the smaller share. Cost n^2 / 2 tail sums.
 */
public final class TellingRatiosApart {

    private static final int MOST = 20_000;

    private TellingRatiosApart() {}

    /** Smallest number; empty above 20,000. */
    public static OptionalInt needed(double smaller, double larger, double error) {
        if (!(smaller >= 0 && smaller < larger && larger <= 1 && error > 0 && error < 0.5)) {
            throw new IllegalArgumentException("Two different shares in order and an error below 0.5 are needed: "
                    + smaller + ", " + larger + ", " + error);
        }
        KnownShare small = new KnownShare(smaller);
        KnownShare large = new KnownShare(larger);
        int cut = 0;
        for (int n = 1; n <= MOST; n++) {
            while (1 - small.fewerThan(cut + 1L, n) > error) {
                cut++;
            }
            if (large.fewerThan(cut + 1L, n) <= error) {
                return OptionalInt.of(n);
            }
        }
        return OptionalInt.empty();
    }

    /** Probability that the uncorrected chi-square test of n plants against {@code tested} speaks at level alpha. */
    public static double power(double tested, double truth, int n, double alpha) {
        double critical = new ChiSquaredDistribution(1).inverseCumulativeProbability(1 - alpha);
        KnownShare share = new KnownShare(truth);
        double power = 0;
        for (int x = 0; x <= n; x++) {
            Classes classes = new Classes(new long[] {x, n - x}, new double[] {tested, 1 - tested});
            if (GoodnessOfFit.of(classes).chiSquare() > critical) {
                power += share.fewerThan(x + 1L, n) - share.fewerThan(x, n);
            }
        }
        return power;
    }
}
