package pippinry.nursery.internal.emergence;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * A curve of emergence fitted to counts.
 *
 * <p>Share up by day t: F(t) = d / (1 + exp(b (ln t - ln e))), b &lt; 0: of all seeds the share d comes up in the end, half of
 * those by day e, and b says how close together. Each count is what came up in an interval, and what never did is what was
 * left: the likelihood is the product of (F(to) - F(from)) over the intervals and of 1 - F(last) for the rest. Ritz, C.,
 * Pipper, C. B. & Streibig, J. C. 2013. Analysis of germination data from agricultural experiments. European Journal of
 * Agronomy 45:1-6.
 *
 * <p>Standard errors come from the curvature of the log-likelihood. Cost: some hundred passes over the counts. Assumes that
 * seeds come up independently of each other, which a tray that dries out or damps off breaks.
 *
 * @param steepness b
 * @param share d, from 0 to 1
 * @param half e, days
 * @param shareError standard error of d
 * @param halfError standard error of e, days
 */
public record EmergenceCurve(
        double steepness,
        double share,
        double half,
        double steepnessError,
        double shareError,
        double halfError,
        double logLikelihood) {

    private static final double Z95 = 1.959963984540054;

    /** Share up by that day. */
    public double at(double day) {
        return day <= 0 ? 0 : share / (1 + Math.exp(steepness * (Math.log(day) - Math.log(half))));
    }

    /** Limits of the final share at 95 %, reckoned on the logit so that they stay between 0 and 1. */
    public pippinry.statistics.proportions.Interval shareLimits() {
        double logit = Math.log(share / (1 - share));
        double reach = Z95 * shareError / (share * (1 - share));
        return new pippinry.statistics.proportions.Interval(expit(logit - reach), expit(logit + reach));
    }

    private static double expit(double logit) {
        return 1 / (1 + Math.exp(-logit));
    }

    static EmergenceCurve of(double[] at, RealMatrix curvature, double logLikelihood) {
        DecompositionSolver solver = new LUDecomposition(curvature).getSolver();
        RealMatrix covariance = solver.isNonSingular()
                ? solver.getInverse()
                : new Array2DRowRealMatrix(new double[][] {{Double.NaN, 0, 0}, {0, Double.NaN, 0}, {0, 0, Double.NaN}});
        return new EmergenceCurve(
                at[0],
                at[1],
                at[2],
                Math.sqrt(covariance.getEntry(0, 0)),
                Math.sqrt(covariance.getEntry(1, 1)),
                Math.sqrt(covariance.getEntry(2, 2)),
                logLikelihood);
    }
}
