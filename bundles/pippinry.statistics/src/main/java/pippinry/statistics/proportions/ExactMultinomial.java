package pippinry.statistics.proportions;

import java.util.OptionalDouble;
import org.hipparchus.special.Gamma;

/**
 * Exact test of counts against a ratio: the sum of the probabilities of all outcomes no more probable than the observed
 * one (relative slack 1e-7).
 *
 * <p>With two classes this is the usual exact binomial test. All outcomes are gone through, so the cost is their number,
 * (n + c - 1 over c - 1) for n counts in c classes with a part above zero.
 */
public final class ExactMultinomial {

    /** More outcomes than this are not gone through. */
    public static final double MOST_OUTCOMES = 1e8;

    private static final double LOG_SLACK = Math.log1p(1e-7);

    private final int total;
    private final double[][] logTerm;
    private final double limit;
    private double sum;

    private ExactMultinomial(Classes classes, int[] allowed) {
        total = Math.toIntExact(classes.total());
        logTerm = new double[allowed.length][total + 1];
        double observed = Gamma.logGamma(total + 1.0);
        for (int i = 0; i < allowed.length; i++) {
            fill(logTerm[i], Math.log(classes.share(allowed[i])));
            observed += logTerm[i][(int) classes.observed(allowed[i])];
        }
        limit = observed + LOG_SLACK;
    }

    /** The p-value, or empty when there are more than {@link #MOST_OUTCOMES} outcomes. */
    public static OptionalDouble p(Classes classes) {
        if (classes.refuted()) {
            return OptionalDouble.of(0);
        }
        if (outcomes(classes) > MOST_OUTCOMES) {
            return OptionalDouble.empty();
        }
        int[] allowed = classes.allowed();
        if (allowed.length == 1) {
            return OptionalDouble.of(1);
        }
        ExactMultinomial test = new ExactMultinomial(classes, allowed);
        test.place(0, test.total, Gamma.logGamma(test.total + 1.0));
        return OptionalDouble.of(Math.min(1, test.sum));
    }

    /** How many different outcomes the test has to go through. */
    public static double outcomes(Classes classes) {
        int free = classes.allowed().length - 1;
        double ways = 1;
        for (int i = 1; i <= free; i++) {
            ways = ways * (classes.total() + i) / i;
        }
        return Math.rint(ways);
    }

    private static void fill(double[] row, double logShare) {
        for (int x = 0; x < row.length; x++) {
            row[x] = x * logShare - Gamma.logGamma(x + 1.0);
        }
    }

    private void place(int index, int left, double log) {
        if (index == logTerm.length - 2) {
            placeLastTwo(left, log);
            return;
        }
        for (int x = 0; x <= left; x++) {
            place(index + 1, left - x, log + logTerm[index][x]);
        }
    }

    private void placeLastTwo(int left, double log) {
        double[] one = logTerm[logTerm.length - 2];
        double[] other = logTerm[logTerm.length - 1];
        for (int x = 0; x <= left; x++) {
            double outcome = log + one[x] + other[left - x];
            if (outcome <= limit) {
                sum += Math.exp(outcome);
            }
        }
    }
}
