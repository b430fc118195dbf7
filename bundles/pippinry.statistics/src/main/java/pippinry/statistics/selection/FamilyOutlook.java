package pippinry.statistics.selection;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.special.Erf;

/**
 * What a family promises in one trait: its mean, how sure that is, and how far its members spread.
 *
 * <p>Members are normal about the family's mean, the mean is normal about its prediction. What depends on the mean without
 * a closed form is averaged over it on 81 points to four deviations either side.
 *
 * @param mean predicted mean of the family
 * @param doubt standard deviation of the mean about its prediction
 * @param spread standard deviation of true values within the family, above 0
 */
public record FamilyOutlook(double mean, double doubt, double spread) {

    private static final int POINTS = 81;
    private static final double REACH = 4;

    public FamilyOutlook {
        if (!(doubt >= 0) || !(spread > 0)) {
            throw new IllegalArgumentException("A doubt of 0 or more and a spread above 0: " + doubt + ", " + spread);
        }
    }

    /** Share of the family whose true value lies above the threshold, the doubt of the mean taken in. */
    public double shareAbove(double threshold) {
        return above((threshold - mean) / Math.hypot(doubt, spread));
    }

    /** Expected true value of the best of n, were all true values known. */
    public double bestOf(int n) {
        return mean + NormalOrder.expectedBest(n) * spread;
    }

    /** Expected true value of the one of n that looks best, scores agreeing with true values with this correlation. */
    public double bestLookingOf(int n, double accuracy) {
        return mean + NormalOrder.expectedBest(n) * accuracy * spread;
    }

    /** Probability that at least one of n lies above the threshold. */
    public double chanceOfOneAbove(double threshold, int n) {
        return overMeans(at -> Response.atLeastOneAbove(threshold, at, spread, n));
    }

    private double overMeans(DoubleUnaryOperator f) {
        if (doubt == 0) {
            return f.applyAsDouble(mean);
        }
        double sum = 0;
        double weights = 0;
        for (int i = 0; i < POINTS; i++) {
            double z = REACH * (2.0 * i / (POINTS - 1) - 1);
            double weight = Math.exp(-z * z / 2);
            sum += weight * f.applyAsDouble(mean + z * doubt);
            weights += weight;
        }
        return sum / weights;
    }

    private static double above(double z) {
        return Erf.erfc(z / Math.sqrt(2)) / 2;
    }
}
