package pippinry.statistics.selection;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.special.Beta;
import org.hipparchus.special.Erf;
import org.hipparchus.special.Gamma;

/**
 * Expected order statistics of a standard normal sample: how good the best of n is, and the best k on average.
 *
 * <p>Definition: E(r, n) = n! / ((r-1)! (n-r)!) integral of x phi(x) Phi(x)^(n-r) (1-Phi(x))^(r-1) dx, rank 1 the largest. Harter,
 * H. L. 1961. Expected values of normal order statistics. Biometrika 48:151-165. The mean of the k largest is one integral
 * too, since their densities add up to n phi(x) times a binomial tail. Composite Gauss-Legendre quadrature, good to
 * about 1e-11 for n up to a million.
 */
public final class NormalOrder {

    private static final double REACH = 12;
    private static final int PIECES = 160;
    /** Made once: its points are reckoned with many digits. */
    private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(12);

    private static final double LOG_ROOT_TWO_PI = 0.5 * Math.log(2 * Math.PI);

    private NormalOrder() {}

    /** Expected largest of n standard normal values. */
    public static double expectedBest(int n) {
        return expected(n, 1);
    }

    /** Expected value at a rank, 1 being the largest. */
    public static double expected(int n, int rank) {
        check(n, rank);
        return moment(n, rank, x -> x);
    }

    /** Variance of the value at a rank. */
    public static double variance(int n, int rank) {
        check(n, rank);
        double mean = expected(n, rank);
        return moment(n, rank, x -> (x - mean) * (x - mean));
    }

    /** Expected mean of the best {@code kept} of {@code n}: the selection intensity of a finite family. */
    public static double meanOfBest(int kept, int n) {
        check(n, kept);
        if (kept == n) {
            return 0;
        }
        return integral(x -> x * (double) n / kept * density(x) * Beta.regularizedBeta(below(x), n - kept, kept));
    }

    /** Burrows, P. M. 1972. Expected selection differentials for directional selection. Biometrics 28:1091-1100. */
    public static double burrows(int kept, int n) {
        check(n, kept);
        double i = SelectionIntensity.of((double) kept / n).intensity();
        return i - (n - kept) / (2.0 * kept * (n + 1) * i);
    }

    private static double moment(int n, int rank, DoubleUnaryOperator value) {
        double ways = Gamma.logGamma(n + 1.0) - Gamma.logGamma(rank) - Gamma.logGamma(n - rank + 1.0);
        return integral(x -> {
            double log = ways - x * x / 2 - LOG_ROOT_TWO_PI + power(n - rank, below(x)) + power(rank - 1, below(-x));
            return value.applyAsDouble(x) * Math.exp(log);
        });
    }

    private static double power(int exponent, double base) {
        return exponent == 0 ? 0 : exponent * Math.log(base);
    }

    private static double density(double x) {
        return Math.exp(-x * x / 2 - LOG_ROOT_TWO_PI);
    }

    private static double below(double x) {
        return Erf.erfc(-x / Math.sqrt(2)) / 2;
    }

    private static double integral(DoubleUnaryOperator f) {
        double width = 2 * REACH / PIECES;
        double sum = 0;
        for (int i = 0; i < PIECES; i++) {
            double middle = -REACH + (i + 0.5) * width;
            sum += RULE.integrate(z -> f.applyAsDouble(middle + z * width / 2)) * width / 2;
        }
        return sum;
    }

    private static void check(int n, int rank) {
        if (n < 1 || rank < 1 || rank > n) {
            throw new IllegalArgumentException("A rank lies between 1 and the number of values: " + rank + " of " + n);
        }
    }
}
