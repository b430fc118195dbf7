package pippinry.statistics.discrete;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Probabilities of many discrete unknowns that are tied together by small tables, as genotypes are by a pedigree.
 *
 * <p>Exact where the ties are not too dense: the unknowns are eliminated one by one in an order of least neighbours, each in
 * a bucket of the tables about it, and the messages sent back give every marginal. Elston, R. C. & Stewart, J. 1971. A
 * general model for the genetic analysis of pedigree data. Human Heredity 21:523-542; Cannings, C., Thompson, E. A. & Skolnick,
 * M. H. 1978. Probability functions on complex pedigrees. Advances in Applied Probability 10:26-61; Dechter, R. 1999. Bucket
 * elimination: a unifying framework for reasoning. Artificial Intelligence 113:41-85. Cost: the sum of the bucket tables.
 *
 * <p>Where a bucket would hold more than two million weights, messages are passed round the loops until they settle (loopy
 * belief propagation: Pearl, J. 1988. Probabilistic Reasoning in Intelligent Systems. Morgan Kaufmann; Murphy, K. P., Weiss, Y. &
 * Jordan, M. I. 1999. Proceedings of Uncertainty in Artificial Intelligence 15:467-475), an approximation that is told
 * apart by {@link Marginals#exact}.
 */
public final class Network {

    private static final double MOST_WEIGHTS = 2e6;

    private final int[] sizes;
    private final List<Factor> factors = new ArrayList<>();

    /**
     * Unknowns without any tie.
     *
     * @param sizes how many states each unknown has
     */
    public Network(int[] sizes) {
        this.sizes = sizes.clone();
    }

    /**
     * Probability of each state of each unknown.
     *
     * @param exact false when they come from an approximation
     */
    public record Marginals(List<double[]> of, boolean exact) {
        public Marginals {
            of = List.copyOf(of);
        }
    }

    /**
     * Ties unknowns together.
     *
     * @param unknowns in any order, each once
     * @param weights not negative; the last of these unknowns runs fastest
     */
    public Network tie(int[] unknowns, double... weights) {
        int[] rising = unknowns.clone();
        Arrays.sort(rising);
        int[] size = Arrays.stream(rising).map(unknown -> sizes[unknown]).toArray();
        factors.add(new Factor(rising, size, reordered(unknowns, rising, weights)));
        return this;
    }

    /** Every marginal; all zero for unknowns whose ties contradict each other. */
    public Marginals marginals() {
        return marginals(MOST_WEIGHTS);
    }

    Marginals marginals(double mostWeights) {
        EliminationOrder order = new EliminationOrder(sizes, factors);
        return order.largestTable() <= mostWeights
                ? new Marginals(new BucketTree(sizes, factors, order.order()).marginals(), true)
                : new Marginals(new LoopyMessages(sizes, factors).marginals(), false);
    }

    private double[] reordered(int[] given, int[] rising, double[] weights) {
        if (Arrays.equals(given, rising)) {
            return weights.clone();
        }
        double[] result = new double[weights.length];
        int[] state = new int[given.length];
        for (double weight : weights) {
            int place = 0;
            for (int unknown : rising) {
                place = place * sizes[unknown] + state[indexOf(given, unknown)];
            }
            result[place] = weight;
            for (int digit = given.length - 1; digit >= 0 && ++state[digit] == sizes[given[digit]]; digit--) {
                state[digit] = 0;
            }
        }
        return result;
    }

    private static int indexOf(int[] values, int wanted) {
        for (int i = 0; i < values.length; i++) {
            if (values[i] == wanted) {
                return i;
            }
        }
        throw new IllegalArgumentException("Unknown " + wanted + " is not among " + Arrays.toString(values));
    }
}
