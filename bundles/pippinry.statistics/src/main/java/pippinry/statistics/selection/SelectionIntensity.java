package pippinry.statistics.selection;

import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * Truncation selection in an endless normal population: Falconer, D. S. & Mackay, T. F. C. 1996. Introduction to
 * Quantitative Genetics, 4th ed., appendix A. For small families use {@link NormalOrder#meanOfBest}.
 *
 * @param kept fraction kept, between 0 and 1
 * @param truncation the standard deviation above which values are kept
 * @param intensity mean of those kept, in standard deviations
 * @param varianceLost share of the variance lost among those kept, i (i - x)
 */
public record SelectionIntensity(double kept, double truncation, double intensity, double varianceLost) {

    public static SelectionIntensity of(double kept) {
        if (!(kept > 0 && kept < 1)) {
            throw new IllegalArgumentException("The fraction kept lies strictly between 0 and 1, not " + kept);
        }
        NormalDistribution normal = new NormalDistribution();
        double x = -normal.inverseCumulativeProbability(kept);
        double i = normal.density(x) / kept;
        return new SelectionIntensity(kept, x, i, i * (i - x));
    }
}
