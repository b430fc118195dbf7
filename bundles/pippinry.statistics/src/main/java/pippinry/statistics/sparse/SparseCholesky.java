package pippinry.statistics.sparse;

import java.util.Arrays;

/**
 * The Cholesky factor of a sparse positive definite matrix by the multifrontal method: I. S. Duff and J. K. Reid (1983) The
 * multifrontal solution of indefinite sparse symmetric linear equations, ACM Transactions on Mathematical Software 9:302-325; J.
 * W. H. Liu (1992) The multifrontal method for sparse matrix solution: theory and practice, SIAM Review 34:82-109. Each block
 * gathers its elements of the matrix and what its children pass on in a dense block, eliminates its own columns there and passes
 * the rest on. Subtrees and large blocks are spread over the processors. Cost: the squares of the factor's column lengths;
 * memory: the factor, and for a while the blocks on the way. Results do not depend on how many processors there are.
 */
public final class SparseCholesky {
    private static final int ROOT = EliminationTree.ROOT;

    final EliminationPlan plan;
    /** For each place its column of the factor, over the rows of its block. */
    final double[][] columns;

    private final double[][][] passedOn;
    private final Subtrees subtrees;

    private SparseCholesky(EliminationPlan plan) {
        this.plan = plan;
        this.columns = new double[plan.size][];
        this.passedOn = new double[plan.blocks.count()][][];
        this.subtrees = Subtrees.of(plan);
    }

    /**
     * Factors the matrix.
     *
     * @param plan made for a matrix with elements at the same places
     * @throws NotPositiveDefinite if it is not positive definite
     */
    public static SparseCholesky of(EliminationPlan plan, SparseSymmetric matrix) {
        SparseCholesky factor = new SparseCholesky(plan);
        factor.subtrees.below().parallel().forEach(root -> {
            for (int block = factor.subtrees.start(root); block <= root; block++)
                factor.eliminate(block, matrix, false);
        });
        for (int block : factor.subtrees.top()) factor.eliminate(block, matrix, true);
        return factor;
    }

    private void eliminate(int block, SparseSymmetric matrix, boolean share) {
        int first = plan.blocks.first[block];
        int width = plan.blocks.width(block);
        double[][] front = new double[plan.height(block)][];
        for (int j = 0; j < front.length; j++) front[j] = new double[front.length];
        for (int j = 0; j < width; j++) {
            for (int at = plan.elementStart[first + j]; at < plan.elementStart[first + j + 1]; at++) {
                front[j][plan.elementRow[at]] += matrix.values()[plan.elementValue[at]];
            }
        }
        for (int child = plan.firstChild[block]; child != ROOT; child = plan.sibling[child]) gather(child, front);
        int bad = DenseColumns.eliminate(front, width, share);
        if (bad >= 0) throw new NotPositiveDefinite(plan.order[first + bad]);
        System.arraycopy(front, 0, columns, first, width);
        passedOn[block] = plan.parent[block] == ROOT ? null : Arrays.copyOfRange(front, width, front.length);
    }

    private void gather(int child, double[][] front) {
        double[][] passed = passedOn[child];
        int[] row = plan.inParent[child];
        int width = plan.blocks.width(child);
        for (int j = 0; j < passed.length; j++) {
            double[] from = passed[j];
            double[] to = front[row[j]];
            for (int i = j; i < row.length; i++) to[row[i]] += from[width + i];
        }
        passedOn[child] = null;
    }

    /** The natural logarithm of the determinant. */
    public double logDeterminant() {
        double sum = 0;
        for (int block = 0; block < plan.blocks.count(); block++) {
            for (int j = 0; j < plan.blocks.width(block); j++) {
                sum += Math.log(columns[plan.blocks.first[block] + j][j]);
            }
        }
        return 2 * sum;
    }

    /** Solves the system with this right-hand side, which is kept. */
    public double[] solve(double[] right) {
        double[] x = new double[plan.size];
        for (int place = 0; place < x.length; place++) x[place] = right[plan.order[place]];
        for (int block = 0; block < plan.blocks.count(); block++) forward(block, x);
        for (int block = plan.blocks.count() - 1; block >= 0; block--) backward(block, x);
        double[] solution = new double[plan.size];
        for (int place = 0; place < x.length; place++) solution[plan.order[place]] = x[place];
        return solution;
    }

    private void forward(int block, double[] x) {
        int first = plan.blocks.first[block];
        int width = plan.blocks.width(block);
        int[] below = plan.below[block];
        for (int j = 0; j < width; j++) {
            double[] column = columns[first + j];
            double value = x[first + j] / column[j];
            x[first + j] = value;
            for (int i = j + 1; i < width; i++) x[first + i] -= column[i] * value;
            for (int i = 0; i < below.length; i++) x[below[i]] -= column[width + i] * value;
        }
    }

    private void backward(int block, double[] x) {
        int first = plan.blocks.first[block];
        int width = plan.blocks.width(block);
        int[] below = plan.below[block];
        for (int j = width - 1; j >= 0; j--) {
            double[] column = columns[first + j];
            double value = x[first + j];
            for (int i = j + 1; i < width; i++) value -= column[i] * x[first + i];
            for (int i = 0; i < below.length; i++) value -= column[width + i] * x[below[i]];
            x[first + j] = value / column[j];
        }
    }

    /**
     * Those elements of the inverse that stand where the matrix has elements, in the order of its values. See {@link
     * SelectedInverse}.
     */
    public double[] inverseAtElements() {
        return SelectedInverse.of(this);
    }

    Subtrees subtrees() {
        return subtrees;
    }
}
