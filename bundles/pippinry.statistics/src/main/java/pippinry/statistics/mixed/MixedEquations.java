package pippinry.statistics.mixed;

import java.util.Arrays;
import java.util.List;
import pippinry.statistics.sparse.EliminationPlan;
import pippinry.statistics.sparse.LooseElements;
import pippinry.statistics.sparse.SparseCholesky;
import pippinry.statistics.sparse.SparseSymmetric;

/**
 * The mixed model equations of some of a model's random terms: C. R. Henderson (1950) Estimation of genetic parameters, Annals of
 * Mathematical Statistics 21:309; their places are the same for all variances, so the order of elimination is found once.
 */
final class MixedEquations {
    final MixedModel model;
    /** Which of the model's terms take part. */
    final List<RandomTerm> terms;
    /** Where the unknowns of each term begin, the fixed columns being first; one more entry than terms. */
    final int[] start;

    private final SparseSymmetric crossProducts;
    private final double[] right;
    private final int[][] inversePlace;
    private final double[][] inverseValue;
    private final EliminationPlan plan;

    MixedEquations(MixedModel model, List<RandomTerm> terms) {
        this.model = model;
        this.terms = List.copyOf(terms);
        this.start = new int[terms.size() + 1];
        start[0] = model.fixed().columns();
        for (int t = 0; t < terms.size(); t++)
            start[t + 1] = start[t] + terms.get(t).levels();
        this.crossProducts = crossProducts();
        this.inversePlace = new int[terms.size()][];
        this.inverseValue = new double[terms.size()][];
        for (int t = 0; t < terms.size(); t++) placeInverse(t);
        this.right = fromRecords(model.records());
        this.plan = EliminationPlan.of(crossProducts);
    }

    int unknowns() {
        return start[terms.size()];
    }

    int fixed() {
        return start[0];
    }

    private SparseSymmetric crossProducts() {
        LooseElements elements = new LooseElements(unknowns());
        int[] place = new int[64];
        double[] value = new double[64];
        for (int record = 0; record < model.size(); record++) {
            int count = row(record, place, value);
            for (int a = 0; a < count; a++) {
                for (int b = a; b < count; b++) elements.add(place[a], place[b], value[a] * value[b]);
            }
        }
        for (int t = 0; t < terms.size(); t++) addPlaces(elements, t);
        return elements.sum();
    }

    private int row(int record, int[] place, double[] value) {
        FixedPart fixed = model.fixed();
        int count = fixed.count(record);
        for (int at = 0; at < count; at++) {
            place[at] = fixed.column(record, at);
            value[at] = fixed.value(record, at);
        }
        for (int t = 0; t < terms.size(); t++) {
            int level = terms.get(t).levelOf()[record];
            if (level < 0) continue;
            place[count] = start[t] + level;
            value[count++] = 1;
        }
        return count;
    }

    private void addPlaces(LooseElements elements, int t) {
        terms.get(t).covariance().ifPresent(known -> {
            SparseSymmetric inverse = known.inverse();
            for (int column = 0; column < inverse.size(); column++) {
                for (int at = inverse.columnStart()[column]; at < inverse.columnStart()[column + 1]; at++) {
                    elements.add(start[t] + inverse.rows()[at], start[t] + column, 0);
                }
            }
        });
    }

    private void placeInverse(int t) {
        RandomTerm term = terms.get(t);
        if (term.covariance().isEmpty()) {
            inversePlace[t] = new int[term.levels()];
            inverseValue[t] = new double[term.levels()];
            Arrays.fill(inverseValue[t], 1);
            for (int level = 0; level < term.levels(); level++) {
                inversePlace[t][level] = crossProducts.columnStart()[start[t] + level];
            }
            return;
        }
        SparseSymmetric inverse = term.covariance().get().inverse();
        inverseValue[t] = inverse.values();
        inversePlace[t] = new int[inverse.elements()];
        for (int column = 0; column < inverse.size(); column++) {
            for (int at = inverse.columnStart()[column]; at < inverse.columnStart()[column + 1]; at++) {
                inversePlace[t][at] = crossProducts.place(start[t] + inverse.rows()[at], start[t] + column);
            }
        }
    }

    /** W'v for a value of each record. */
    double[] fromRecords(double[] values) {
        double[] sums = new double[unknowns()];
        FixedPart fixed = model.fixed();
        for (int record = 0; record < values.length; record++) {
            for (int at = 0; at < fixed.count(record); at++) {
                sums[fixed.column(record, at)] += fixed.value(record, at) * values[record];
            }
        }
        for (int t = 0; t < terms.size(); t++) {
            int[] levelOf = terms.get(t).levelOf();
            for (int record = 0; record < values.length; record++) {
                if (levelOf[record] >= 0) sums[start[t] + levelOf[record]] += values[record];
            }
        }
        return sums;
    }

    /** W s: what a solution says of each record. */
    double[] toRecords(double[] solution) {
        double[] said = new double[model.size()];
        FixedPart fixed = model.fixed();
        for (int record = 0; record < said.length; record++) {
            for (int at = 0; at < fixed.count(record); at++) {
                said[record] += fixed.value(record, at) * solution[fixed.column(record, at)];
            }
        }
        for (int t = 0; t < terms.size(); t++) addTerm(t, solution, 1, said);
        return said;
    }

    /** Adds a term's part to what is said of each record. */
    void addTerm(int t, double[] solution, double times, double[] said) {
        int[] levelOf = terms.get(t).levelOf();
        for (int record = 0; record < said.length; record++) {
            if (levelOf[record] >= 0) said[record] += times * solution[start[t] + levelOf[record]];
        }
    }

    /** The factor of the equations when the residual variance is so many times each term's. */
    SparseCholesky factor(double[] ratios) {
        double[] values = Arrays.copyOf(crossProducts.values(), crossProducts.elements());
        for (int t = 0; t < terms.size(); t++) {
            for (int at = 0; at < inversePlace[t].length; at++) {
                values[inversePlace[t][at]] += ratios[t] * inverseValue[t][at];
            }
        }
        return SparseCholesky.of(plan, crossProducts.withValues(values));
    }

    double[] right() {
        return right;
    }

    /** u'K⁻¹u of a term. */
    double quadratic(int t, double[] solution) {
        RandomTerm term = terms.get(t);
        double[] u = Arrays.copyOfRange(solution, start[t], start[t + 1]);
        double[] times =
                term.covariance().map(known -> known.inverse().times(u)).orElse(u);
        double sum = 0;
        for (int level = 0; level < u.length; level++) sum += u[level] * times[level];
        return sum;
    }

    /** The trace of K⁻¹ times the term's part of the inverse, which is given at the equations' elements. */
    double trace(int t, double[] inverse) {
        double trace = 0;
        boolean triangle = terms.get(t).covariance().isPresent();
        for (int at = 0; at < inversePlace[t].length; at++) {
            trace += 2 * inverseValue[t][at] * inverse[inversePlace[t][at]];
        }
        for (int level = 0; level < terms.get(t).levels(); level++) {
            int diagonal = triangle ? terms.get(t).covariance().get().inverse().columnStart()[level] : level;
            trace -= inverseValue[t][diagonal] * inverse[inversePlace[t][diagonal]];
        }
        return trace;
    }

    /** The diagonal of an inverse that is given at the equations' elements. */
    double[] diagonal(double[] inverse) {
        double[] diagonal = new double[unknowns()];
        for (int i = 0; i < diagonal.length; i++)
            diagonal[i] = inverse[crossProducts.columnStart()[i]];
        return diagonal;
    }
}
