package pippinry.statistics.proportions;

import org.hipparchus.special.Gamma;

/**
 * Chi-square test of counts against a ratio.
 *
 * <p>Pearson, K. 1900. On the criterion that a given system of deviations ... can be reasonably supposed to have arisen
 * from random sampling. Philosophical Magazine 50:157-175. Classes with part zero leave the sum; a count in one of them
 * refutes the ratio: then chi-square is infinite and p is 0.
 *
 * @param chiSquare sum of (observed - expected)^2 / expected
 * @param degrees of freedom; 0 when the ratio allows one class only, and then p is 1
 * @param smallestExpected the smallest expected count, for the usual warning below 5
 */
public record GoodnessOfFit(double chiSquare, int degrees, double p, double smallestExpected) {

    public static GoodnessOfFit of(Classes classes) {
        double sum = 0;
        for (int i : classes.allowed()) {
            double difference = classes.observed(i) - classes.expected(i);
            sum += difference * difference / classes.expected(i);
        }
        return result(classes, sum);
    }

    /**
     * With the correction of half a count, never below zero; two classes only. Yates, F. 1934. Contingency tables
     * involving small numbers and the chi-square test. Supplement to the Journal of the Royal Statistical Society
     * 1:217-235.
     */
    public static GoodnessOfFit corrected(Classes classes) {
        if (classes.count() != 2) {
            throw new IllegalArgumentException("The correction is for two classes, not " + classes.count());
        }
        double sum = 0;
        for (int i : classes.allowed()) {
            double difference = Math.max(Math.abs(classes.observed(i) - classes.expected(i)) - 0.5, 0);
            sum += difference * difference / classes.expected(i);
        }
        return result(classes, sum);
    }

    /** Likelihood-ratio form, G = 2 sum observed ln(observed / expected). */
    public static GoodnessOfFit likelihoodRatio(Classes classes) {
        double sum = 0;
        for (int i : classes.allowed()) {
            long seen = classes.observed(i);
            sum += seen == 0 ? 0 : 2 * seen * Math.log(seen / classes.expected(i));
        }
        return result(classes, sum);
    }

    /** Upper tail of the chi-square distribution; 1 with no degree of freedom. */
    public static double upperTail(double chiSquare, int degrees) {
        if (degrees == 0 || chiSquare <= 0) {
            return 1;
        }
        return Double.isInfinite(chiSquare) ? 0 : Gamma.regularizedGammaQ(degrees / 2.0, chiSquare / 2);
    }

    private static GoodnessOfFit result(Classes classes, double sum) {
        int[] allowed = classes.allowed();
        double chiSquare = classes.refuted() ? Double.POSITIVE_INFINITY : sum;
        double smallest = Double.POSITIVE_INFINITY;
        for (int i : allowed) {
            smallest = Math.min(smallest, classes.expected(i));
        }
        return new GoodnessOfFit(chiSquare, allowed.length - 1, upperTail(chiSquare, allowed.length - 1), smallest);
    }
}
