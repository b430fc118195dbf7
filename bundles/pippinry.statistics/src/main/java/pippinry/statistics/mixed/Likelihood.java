package pippinry.statistics.mixed;

import java.util.Arrays;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.RealMatrix;
import pippinry.statistics.sparse.SparseCholesky;

/**
 * The restricted log-likelihood at some variances, with its slope and its average information. H. D. Patterson and R. Thompson
 * (1971) Recovery of inter-block information when block sizes are unequal, Biometrika 58:545-554; average information: D. L.
 * Johnson and R. Thompson (1995) Restricted maximum likelihood estimation of variance components for univariate animal models
 * using sparse matrix techniques and average information, Journal of Dairy Science 78:449-456. Cost: one factor, one selected
 * inverse, and a solution for each variance.
 */
final class Likelihood {
    private static final double LOG_TWO_PI = Math.log(2 * Math.PI);

    final MixedEquations equations;
    /** The terms' variances, the residual last. */
    final double[] variances;

    final double[] solution;
    final double[] residuals;
    final double value;
    private final SparseCholesky factor;
    private double[] inverse;

    Likelihood(MixedEquations equations, double[] variances) {
        this.equations = equations;
        this.variances = variances.clone();
        int terms = equations.terms.size();
        double residual = variances[terms];
        double[] ratios =
                Arrays.stream(variances, 0, terms).map(v -> residual / v).toArray();
        this.factor = equations.factor(ratios);
        this.solution = factor.solve(equations.right());
        this.residuals = equations.model.records().clone();
        double[] said = equations.toRecords(solution);
        for (int record = 0; record < said.length; record++) residuals[record] -= said[record];
        this.value = value(ratios);
    }

    private double residualVariance() {
        return variances[equations.terms.size()];
    }

    private double value(double[] ratios) {
        int n = equations.model.size();
        double residual = residualVariance();
        double square = product(residuals, residuals);
        double sum = (n - equations.fixed()) * LOG_TWO_PI
                + (n - equations.unknowns()) * Math.log(residual)
                + factor.logDeterminant();
        for (int t = 0; t < ratios.length; t++) {
            RandomTerm term = equations.terms.get(t);
            sum += term.levels() * Math.log(variances[t]) + term.logDeterminant();
            square += ratios[t] * equations.quadratic(t, solution);
        }
        return -0.5 * (sum + square / residual);
    }

    static double product(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) sum += a[i] * b[i];
        return sum;
    }

    /** The inverse of the equations at their elements. */
    double[] inverse() {
        if (inverse == null) inverse = factor.inverseAtElements();
        return inverse;
    }

    /** The slope of the log-likelihood in each variance. */
    double[] slope() {
        int terms = equations.terms.size();
        double residual = residualVariance();
        double[] slope = new double[terms + 1];
        double free = equations.model.size() - equations.unknowns();
        for (int t = 0; t < terms; t++) {
            double v = variances[t];
            double trace = residual * equations.trace(t, inverse());
            double q = equations.terms.get(t).levels();
            slope[t] = -0.5 * (q / v - (trace + equations.quadratic(t, solution)) / (v * v));
            free += trace / v;
        }
        slope[terms] = -0.5 * (free / residual - product(residuals, residuals) / (residual * residual));
        return slope;
    }

    /** The average of observed and expected information about the variances. */
    RealMatrix averageInformation() {
        int terms = equations.terms.size();
        double[][] working = new double[terms + 1][];
        double[][] projected = new double[terms + 1][];
        for (int t = 0; t <= terms; t++) {
            working[t] = t == terms ? scaled(residuals, 1 / residualVariance()) : ofTerm(t);
            projected[t] = projected(working[t]);
        }
        RealMatrix information = new Array2DRowRealMatrix(terms + 1, terms + 1);
        for (int a = 0; a <= terms; a++) {
            for (int b = 0; b <= a; b++) {
                double value = product(working[a], projected[b]) / 2;
                information.setEntry(a, b, value);
                information.setEntry(b, a, value);
            }
        }
        return information;
    }

    private double[] ofTerm(int t) {
        double[] said = new double[equations.model.size()];
        equations.addTerm(t, solution, 1 / variances[t], said);
        return said;
    }

    /** P f, with P = V⁻¹ - V⁻¹X(X'V⁻¹X)⁻¹X'V⁻¹. */
    private double[] projected(double[] f) {
        double[] fitted = equations.toRecords(factor.solve(equations.fromRecords(f)));
        double[] left = new double[f.length];
        for (int i = 0; i < f.length; i++) left[i] = (f[i] - fitted[i]) / residualVariance();
        return left;
    }

    private static double[] scaled(double[] values, double times) {
        return Arrays.stream(values).map(value -> value * times).toArray();
    }
}
