package pippinry.statistics.proportions;

import org.hipparchus.special.Gamma;

/**
 * How counts speak for one simple ratio against others: the probability of the counts under each, and the probability
 * of each ratio after seeing them.
 *
 * <p>Bayes' theorem; the probability under a ratio is multinomial.
 */
public final class RatioEvidence {

    private RatioEvidence() {}

    /** Natural logarithm of the probability of the counts under the ratio; minus infinity when it forbids one. */
    public static double logLikelihood(Classes classes) {
        if (classes.refuted()) {
            return Double.NEGATIVE_INFINITY;
        }
        double log = Gamma.logGamma(classes.total() + 1.0);
        for (int i : classes.allowed()) {
            log += classes.observed(i) * Math.log(classes.share(i)) - Gamma.logGamma(classes.observed(i) + 1.0);
        }
        return log;
    }

    /**
     * Probability of each case after the data.
     *
     * @param prior not negative, not all zero
     * @param logLikelihoods one for each case
     */
    public static double[] posterior(double[] prior, double[] logLikelihoods) {
        if (prior.length != logLikelihoods.length) {
            throw new IllegalArgumentException(prior.length + " priors for " + logLikelihoods.length + " cases");
        }
        double largest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < prior.length; i++) {
            if (prior[i] > 0) {
                largest = Math.max(largest, logLikelihoods[i]);
            }
        }
        if (largest == Double.NEGATIVE_INFINITY) {
            throw new IllegalArgumentException("None of the cases can give these counts");
        }
        return scaled(prior, logLikelihoods, largest);
    }

    private static double[] scaled(double[] prior, double[] logLikelihoods, double largest) {
        double[] result = new double[prior.length];
        double sum = 0;
        for (int i = 0; i < prior.length; i++) {
            result[i] = prior[i] == 0 ? 0 : prior[i] * Math.exp(logLikelihoods[i] - largest);
            sum += result[i];
        }
        for (int i = 0; i < prior.length; i++) {
            result[i] /= sum;
        }
        return result;
    }
}
