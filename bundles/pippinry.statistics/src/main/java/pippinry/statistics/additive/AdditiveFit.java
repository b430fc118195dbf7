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
 * <p>The first factor, which may have thousands of levels, is absorbed; what is left is solved through a pseudo-inverse, so
 * that levels which never meet (no chain of records joins them) are found out: their difference is not estimable and is
 * not given. Searle, S. R. 1971. Linear Models. Wiley, chapters 5 and 7. Cost: records, and the cube of the number of levels of
 * the other factors.
 */
public final class AdditiveFit {

    /** One record: a level for each factor, in the order of the factors, and the value. */
    public record Observation(List<String> levels, double value) {
        public Observation {
            levels = List.copyOf(levels);
        }
    }

    /**
     * A figure from the fit.
     *
     * @param standardError of the figure itself, without the error of a further record
     */
    public record Difference(double value, double standardError) {}

    private static final double TINY = 1e-9;

    private final Map<String, Integer> first = new LinkedHashMap<>();
    private final List<Map<String, Integer>> others = new ArrayList<>();
    private final double[] number;
    private final double[] mean;
    private final double[][] meets;
    private final RealMatrix equations;
    private final RealMatrix inverse;
    private final RealVector solution;
    private final double residualVariance;
    private final int degrees;

    /**
     * Fits.
     *
     * @param factors number of levels that each observation names, at least 1
     */
    public AdditiveFit(int factors, List<Observation> observations) {
        if (observations.isEmpty()) {
            throw new IllegalArgumentException("Nothing can be fitted to no records");
        }
        int size = index(factors, observations);
        number = new double[first.size()];
        mean = new double[first.size()];
        meets = new double[first.size()][size];
        absorb(observations);
        double[][] left = new double[size][size];
        double[] right = new double[size];
        reduce(observations, left, right);
        equations = MatrixUtils.createRealMatrix(size == 0 ? new double[1][1] : left);
        EigenDecompositionSymmetric eigen = new EigenDecompositionSymmetric(equations);
        inverse = pseudoInverse(eigen);
        solution = inverse.operate(MatrixUtils.createRealVector(size == 0 ? new double[1] : right));
        degrees = observations.size() - first.size() - rank(eigen);
        residualVariance = degrees > 0 ? residual(observations) / degrees : Double.NaN;
    }

    /** The first level less the second, of one factor; empty when a level is unknown or nothing joins them. */
    public Optional<Difference> difference(int factor, String one, String other) {
        if (!knows(factor, one) || !knows(factor, other)) {
            return Optional.empty();
        }
        Contrast contrast = new Contrast();
        contrast.add(factor, one, 1);
        contrast.add(factor, other, -1);
        return contrast.estimate();
    }

    /** What a record with these levels is expected to be; an empty level stands for the mean over that factor's levels. */
    public Optional<Difference> expected(List<Optional<String>> levels) {
        Contrast contrast = new Contrast();
        for (int factor = 0; factor < levels.size(); factor++) {
            Map<String, Integer> known = factor == 0 ? first : others.get(factor - 1);
            Optional<String> level = levels.get(factor);
            if (level.isPresent() && !known.containsKey(level.get())) {
                return Optional.empty();
            }
            for (String one : level.map(List::of).orElseGet(() -> List.copyOf(known.keySet()))) {
                contrast.add(factor, one, level.isPresent() ? 1 : 1.0 / known.size());
            }
        }
        return contrast.estimate();
    }

    /** Number of records with this level of the first factor. */
    public int records(String level) {
        return first.containsKey(level) ? (int) number[first.get(level)] : 0;
    }

    /** Levels of the first factor, in the order of their first record. */
    public List<String> levels() {
        return List.copyOf(first.keySet());
    }

    /**
     * How far to either side of a figure the interval reaches that holds it with this certainty, by Student's t.
     *
     * @param furtherRecords how many new records, each with its own error, the figure is about; 0 for the figure itself
     * @return infinity when there are no records to spare for the error
     */
    public double reach(Difference figure, int furtherRecords, double certainty) {
        if (degrees < 1) {
            return Double.POSITIVE_INFINITY;
        }
        double square = figure.standardError() * figure.standardError() + furtherRecords * residualVariance;
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
        return (factor == 0 ? first : others.get(factor - 1)).containsKey(level);
    }

    /** A sum of levels with weights; levels of the first factor bring in the others that their records had. */
    private final class Contrast {
        private final Map<Integer, Double> own = new LinkedHashMap<>();
        private final double[] rest = new double[solution.getDimension()];

        void add(int factor, String level, double weight) {
            if (factor == 0) {
                int i = first.get(level);
                own.merge(i, weight, Double::sum);
                for (int j = 0; j < meets[i].length; j++) {
                    rest[j] -= weight * meets[i][j] / number[i];
                }
            } else {
                rest[others.get(factor - 1).get(level)] += weight;
            }
        }

        Optional<Difference> estimate() {
            RealVector vector = MatrixUtils.createRealVector(rest);
            if (equations.operate(inverse.operate(vector)).subtract(vector).getNorm() > 1e-6) {
                return Optional.empty();
            }
            double value = vector.dotProduct(solution);
            double variance = vector.dotProduct(inverse.operate(vector));
            for (Map.Entry<Integer, Double> part : own.entrySet()) {
                value += part.getValue() * mean[part.getKey()];
                variance += part.getValue() * part.getValue() / number[part.getKey()];
            }
            return Optional.of(new Difference(value, Math.sqrt(Math.max(0, variance) * residualVariance)));
        }
    }

    private int index(int factors, List<Observation> observations) {
        observations.forEach(record -> first.putIfAbsent(record.levels().get(0), first.size()));
        int next = 0;
        for (int factor = 1; factor < factors; factor++) {
            Map<String, Integer> levels = new LinkedHashMap<>();
            for (Observation record : observations) {
                if (levels.putIfAbsent(record.levels().get(factor), next) == null) {
                    next++;
                }
            }
            others.add(levels);
        }
        return next;
    }

    private void absorb(List<Observation> observations) {
        for (Observation record : observations) {
            int i = first.get(record.levels().get(0));
            number[i]++;
            mean[i] += record.value();
            for (int j : columns(record)) {
                meets[i][j]++;
            }
        }
        for (int i = 0; i < mean.length; i++) {
            mean[i] /= number[i];
        }
    }

    /** Normal equations of the other factors after the first is absorbed. */
    private void reduce(List<Observation> observations, double[][] left, double[] right) {
        for (Observation record : observations) {
            int[] columns = columns(record);
            double deviation = record.value() - mean[first.get(record.levels().get(0))];
            for (int j : columns) {
                right[j] += deviation;
                for (int k : columns) {
                    left[j][k]++;
                }
            }
        }
        for (int i = 0; i < meets.length; i++) {
            for (int j = 0; j < right.length; j++) {
                for (int k = 0; k < right.length && meets[i][j] != 0; k++) {
                    left[j][k] -= meets[i][j] * meets[i][k] / number[i];
                }
            }
        }
    }

    private int[] columns(Observation record) {
        int[] columns = new int[others.size()];
        for (int factor = 0; factor < columns.length; factor++) {
            columns[factor] = others.get(factor).get(record.levels().get(factor + 1));
        }
        return columns;
    }

    private double residual(List<Observation> observations) {
        double sum = 0;
        for (Observation record : observations) {
            int i = first.get(record.levels().get(0));
            double fitted = mean[i];
            for (int column : columns(record)) {
                fitted += solution.getEntry(column);
            }
            for (int j = 0; j < meets[i].length; j++) {
                fitted -= meets[i][j] / number[i] * solution.getEntry(j);
            }
            sum += (record.value() - fitted) * (record.value() - fitted);
        }
        return sum;
    }

    private static RealMatrix pseudoInverse(EigenDecompositionSymmetric eigen) {
        double[] values = eigen.getEigenvalues();
        double[] inverted = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            inverted[i] = matters(values[i], values) ? 1 / values[i] : 0;
        }
        RealMatrix vectors = eigen.getV();
        return vectors.multiply(MatrixUtils.createRealDiagonalMatrix(inverted)).multiply(vectors.transpose());
    }

    private static int rank(EigenDecompositionSymmetric eigen) {
        int rank = 0;
        for (double value : eigen.getEigenvalues()) {
            rank += matters(value, eigen.getEigenvalues()) ? 1 : 0;
        }
        return rank;
    }

    private static boolean matters(double value, double[] all) {
        double largest = 0;
        for (double other : all) {
            largest = Math.max(largest, Math.abs(other));
        }
        return value > TINY * Math.max(1, largest);
    }
}
