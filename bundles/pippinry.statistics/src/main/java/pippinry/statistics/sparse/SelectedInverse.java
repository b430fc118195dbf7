package pippinry.statistics.sparse;

import java.util.stream.IntStream;

/**
 * Elements of the inverse where the matrix has elements, from the factor alone, without the rest of the inverse: K. Takahashi, J.
 * Fagan and M.-S. Chin (1973) Formation of a sparse bus impedance matrix and its application to short circuit study, 8th Power
 * Industry Computer Applications Conference, 63-69. Goes from the last block to the first; a block takes the inverse among the
 * rows below it from its parent. Cost: about twice that of the factor.
 */
final class SelectedInverse {
    private static final int ROOT = EliminationTree.ROOT;
    private static final int PANEL = 32;
    private static final int FOUR = 4;
    private static final double WORTH_SHARING_OUT = 2e7;

    private final SparseCholesky factor;
    private final EliminationPlan plan;
    private final double[][][] inverse;
    private final int[] waiting;
    private final double[] atElements;

    private SelectedInverse(SparseCholesky factor) {
        this.factor = factor;
        this.plan = factor.plan;
        this.inverse = new double[plan.blocks.count()][][];
        this.waiting = new int[plan.blocks.count()];
        this.atElements = new double[plan.elementValue.length];
    }

    static double[] of(SparseCholesky factor) {
        SelectedInverse selected = new SelectedInverse(factor);
        Subtrees subtrees = factor.subtrees();
        int[] top = subtrees.top();
        for (int i = top.length - 1; i >= 0; i--) selected.invert(top[i], true);
        subtrees.below().parallel().forEach(root -> {
            for (int block = root; block >= subtrees.start(root); block--) selected.invert(block, false);
        });
        return selected.atElements;
    }

    private void invert(int block, boolean share) {
        int first = plan.blocks.first[block];
        int width = plan.blocks.width(block);
        int height = plan.height(block);
        double[][] z = new double[height][];
        for (int j = 0; j < height; j++) z[j] = new double[height];
        takeFromParent(block, z, width);
        for (int end = width; end > 0; end -= PANEL) panel(z, first, Math.max(0, end - PANEL), end, share);
        for (int j = 0; j < width; j++) {
            for (int at = plan.elementStart[first + j]; at < plan.elementStart[first + j + 1]; at++) {
                atElements[plan.elementValue[at]] = z[j][plan.elementRow[at]];
            }
        }
        if (plan.firstChild[block] != ROOT) inverse[block] = z;
    }

    private void takeFromParent(int block, double[][] z, int width) {
        if (plan.parent[block] == ROOT) return;
        double[][] parent = inverse[plan.parent[block]];
        int[] row = plan.inParent[block];
        for (int j = 0; j < row.length; j++) {
            double[] from = parent[row[j]];
            double[] to = z[width + j];
            for (int i = 0; i < row.length; i++) to[width + i] = from[row[i]];
        }
        release(plan.parent[block]);
    }

    /** The last child to take from a block lets it go. */
    private synchronized void release(int parent) {
        if (waiting[parent] == 0) {
            for (int child = plan.firstChild[parent]; child != ROOT; child = plan.sibling[child]) waiting[parent]++;
        }
        if (--waiting[parent] == 0) inverse[parent] = null;
    }

    /**
     * The columns start to end of the inverse from those after them. With Y = L(after, own) L(own, own)⁻¹: Z(after, own) =
     * -Z(after, after) Y, and Z(own, own) = L(own, own)⁻ᵀ L(own, own)⁻¹ - Yᵀ Z(after, own).
     */
    private void panel(double[][] z, int first, int start, int end, boolean share) {
        double[][] y = solvedBack(first, start, end, z.length);
        double after = z.length - end;
        if (share && after * after * (end - start) > WORTH_SHARING_OUT) {
            IntStream.rangeClosed(0, (end - start - 1) / FOUR)
                    .parallel()
                    .map(part -> start + part * FOUR)
                    .forEach(from -> after(z, y, start, from, Math.min(end, from + FOUR), end));
        } else {
            after(z, y, start, start, end, end);
        }
        double[][] own = triangleInverse(first, start, end);
        for (int b = start; b < end; b++) {
            for (int a = b; a < end; a++) {
                double value =
                        product(own[a - start], own[b - start], a, end) - product(y[a - start], z[b], end, z.length);
                z[b][a] = value;
                z[a][b] = value;
            }
        }
        for (int j = start; j < end; j++) {
            for (int t = end; t < z.length; t++) z[t][j] = z[j][t];
        }
    }

    /** The columns of Y. */
    private double[][] solvedBack(int first, int start, int end, int height) {
        double[][] y = new double[end - start][];
        for (int q = end - 1; q >= start; q--) {
            double[] l = factor.columns[first + q];
            double[] column = new double[height];
            System.arraycopy(l, end, column, end, height - end);
            for (int p = q + 1; p < end; p++) DenseColumns.subtractOne(column, y[p - start], l[p], end, height);
            double inverse = 1 / l[q];
            for (int t = end; t < height; t++) column[t] *= inverse;
            y[q - start] = column;
        }
        return y;
    }

    /** Z(after, own) for the own columns from to to, four at a time. */
    private static void after(double[][] z, double[][] y, int start, int from, int to, int end) {
        int height = z.length;
        int j = from;
        for (; j + FOUR <= to; j += FOUR) {
            double[][] four = {y[j - start], y[j + 1 - start], y[j + 2 - start], y[j + 3 - start]};
            int i = end;
            for (; i + FOUR <= height; i += FOUR) {
                DenseColumns.fourByFour(
                        z[j],
                        z[j + 1],
                        z[j + 2],
                        z[j + 3],
                        z[i],
                        z[i + 1],
                        z[i + 2],
                        z[i + 3],
                        four[0][i],
                        four[0][i + 1],
                        four[0][i + 2],
                        four[0][i + 3],
                        four[1][i],
                        four[1][i + 1],
                        four[1][i + 2],
                        four[1][i + 3],
                        four[2][i],
                        four[2][i + 1],
                        four[2][i + 2],
                        four[2][i + 3],
                        four[3][i],
                        four[3][i + 1],
                        four[3][i + 2],
                        four[3][i + 3],
                        end,
                        height);
            }
            for (; i < height; i++) {
                for (int q = 0; q < FOUR; q++) DenseColumns.subtractOne(z[j + q], z[i], four[q][i], end, height);
            }
        }
        for (; j < to; j++) afterOne(z, z[j], y[j - start], end);
    }

    private static void afterOne(double[][] z, double[] target, double[] y, int end) {
        int height = z.length;
        int i = end;
        for (; i + FOUR <= height; i += FOUR) {
            DenseColumns.four(
                    target, z[i], z[i + 1], z[i + 2], z[i + 3], y[i], y[i + 1], y[i + 2], y[i + 3], end, height);
        }
        for (; i < height; i++) DenseColumns.subtractOne(target, z[i], y[i], end, height);
    }

    /** The columns of L(own, own)⁻¹, each over the rows of the block. */
    private double[][] triangleInverse(int first, int start, int end) {
        double[][] inverse = new double[end - start][];
        for (int q = start; q < end; q++) {
            double[] column = new double[end];
            column[q] = 1;
            for (int p = q; p < end; p++) {
                double[] l = factor.columns[first + p];
                column[p] /= l[p];
                for (int t = p + 1; t < end; t++) column[t] -= l[t] * column[p];
            }
            inverse[q - start] = column;
        }
        return inverse;
    }

    private static double product(double[] a, double[] b, int from, int to) {
        double sum = 0;
        for (int t = from; t < to; t++) sum += a[t] * b[t];
        return sum;
    }
}
