package pippinry.statistics.additive;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * Least squares of additive effects: each record is the sum of one level of every factor and an error, whatever levels go
 * together how often.
 *
 * <p>Solved through the pseudo-inverse of the normal equations, so that levels which never meet (no chain of records joins
 * them) are found out: their difference is not estimable and is not given. Searle, S. R. 1971. Linear Models. Wiley,
 * chapter 5. Cost: cube of the number of levels.
 */
public final class AdditiveFit {

    /** One record: a level for each factor, in the order of the factors, and the value. */
    public record Observation(List<String> levels, double value) {
        public Observation {
            levels = List.copyOf(levels);
        }
    }

    /**
     * A difference of two levels.
     *
     * @param standardError of the difference itself, without the error of a further record
     */
    public record Difference(double value, double standardError) {}

    private static final double TINY = 1e-9;

    private final List<Map<String, Integer>> index = new ArrayList<>();
    private final RealMatrix inverse;
    private final RealMatrix projection;
    private final RealVector solution;
    private final double residualVariance;
    private final int degrees;

    /**
     * Fits.
     *
     * @param factors number of levels that each observation names
     */
    public AdditiveFit(int factors, List<Observation> observations) {
        if (observations.isEmpty()) {
            throw new IllegalArgumentException("Nothing can be fitted to no records");
        }
        int size = number(factors, observations);
        double[][] normal = new double[size][size];
        double[] right = new double[size];
        for (Observation observation : observations) {
            int[] columns = columns(observation);
            for (int i : columns) {
                right[i] += observation.value();
                for (int j : columns) {
                    normal[i][j]++;
                }
            }
        }
        RealMatrix equations = MatrixUtils.createRealMatrix(normal);
        EigenDecompositionSymmetric eigen = new EigenDecompositionSymmetric(equations);
        inverse = pseudoInverse(eigen);
        projection = inverse.multiply(equations);
        solution = inverse.operate(MatrixUtils.createRealVector(right));
        degrees = observations.size() - rank(eigen);
        residualVariance = degrees > 0 ? residual(observations) / degrees : Double.NaN;
    }

    /** The first level less the second, of one factor; empty when a level is unknown or nothing joins them. */
    public Optional<Difference> difference(int factor, String one, String other) {
        Integer i = index.get(factor).get(one);
        Integer j = index.get(factor).get(other);
        if (i == null || j == null) {
            return Optional.empty();
        }
        double[] contrast = new double[solution.getDimension()];
        contrast[i]++;
        contrast[j]--;
        return estimate(contrast);
    }

    /** What a record with these levels is expected to be; an empty level stands for the mean over that factor's levels. */
    public Optional<Difference> expected(List<Optional<String>> levels) {
        double[] contrast = new double[solution.getDimension()];
        for (int factor = 0; factor < levels.size(); factor++) {
            Map<String, Integer> columns = index.get(factor);
            if (levels.get(factor).isEmpty()) {
                columns.values().forEach(column -> contrast[column] += 1.0 / columns.size());
            } else if (columns.containsKey(levels.get(factor).get())) {
                contrast[columns.get(levels.get(factor).get())]++;
            } else {
                return Optional.empty();
            }
        }
        return estimate(contrast);
    }

    /**
     * How far to either side of a difference the interval reaches that holds it with this certainty, by Student's t.
     *
     * @param furtherRecords how many new records, each with its own error, the figure is about; 0 for the difference itself
     * @return infinity when there are no records to spare for the error
     */
    public double reach(Difference difference, int furtherRecords, double certainty) {
        if (degrees < 1) {
            return Double.POSITIVE_INFINITY;
        }
        double square = difference.standardError() * difference.standardError() + furtherRecords * residualVariance;
        return Math.sqrt(square) * new TDistribution(degrees).inverseCumulativeProbability((1 + certainty) / 2);
    }

    /** Variance of a record about the fit; NaN when there are no records to spare for it. */
    public double residualVariance() {
        return residualVariance;
    }

    /** Records less what was estimated. */
    public int degreesOfFreedom() {
        return degrees;
    }

    public boolean knows(int factor, String level) {
        return index.get(factor).containsKey(level);
    }

    private Optional<Difference> estimate(double[] contrast) {
        RealVector vector = MatrixUtils.createRealVector(contrast);
        if (projection.preMultiply(vector).subtract(vector).getNorm() > 1e-6) {
            return Optional.empty();
        }
        double variance = vector.dotProduct(inverse.operate(vector)) * residualVariance;
        return Optional.of(new Difference(vector.dotProduct(solution), Math.sqrt(variance)));
    }

    private int number(int factors, List<Observation> observations) {
        int next = 0;
        for (int factor = 0; factor < factors; factor++) {
            Map<String, Integer> levels = new LinkedHashMap<>();
            for (Observation observation : observations) {
                if (levels.putIfAbsent(observation.levels().get(factor), next) == null) {
                    next++;
                }
            }
            index.add(levels);
        }
        return next;
    }

    private int[] columns(Observation observation) {
        int[] columns = new int[index.size()];
        for (int factor = 0; factor < columns.length; factor++) {
            columns[factor] = index.get(factor).get(observation.levels().get(factor));
        }
        return columns;
    }

    private double residual(List<Observation> observations) {
        double sum = 0;
        for (Observation observation : observations) {
            double fitted = 0;
            for (int column : columns(observation)) {
                fitted += solution.getEntry(column);
            }
            sum += (observation.value() - fitted) * (observation.value() - fitted);
        }
        return sum;
    }

    private static RealMatrix pseudoInverse(EigenDecompositionSymmetric eigen) {
        double[] values = eigen.getEigenvalues();
        double[] inverted = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            inverted[i] = values[i] > TINY * values[0] ? 1 / values[i] : 0;
        }
        RealMatrix vectors = eigen.getV();
        return vectors.multiply(MatrixUtils.createRealDiagonalMatrix(inverted)).multiply(vectors.transpose());
    }

    private static int rank(EigenDecompositionSymmetric eigen) {
        double[] values = eigen.getEigenvalues();
        int rank = 0;
        for (double value : values) {
            rank += value > TINY * values[0] ? 1 : 0;
        }
        return rank;
    }
}
