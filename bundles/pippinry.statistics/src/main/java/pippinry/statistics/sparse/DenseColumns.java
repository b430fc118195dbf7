package pippinry.statistics.sparse;

import java.util.stream.IntStream;

/**
 * Work on dense columns, each an array of its own, so that every loop runs over the same index of all its arrays and the compiler
 * turns it into vector instructions.
 */
final class DenseColumns {
    private static final int FOUR = 4;
    private static final int PANEL = 64;
    private static final int ROWS_AT_ONCE = 256;
    private static final int COLUMNS_AT_ONCE = 32;
    private static final double WORTH_SHARING_OUT = 2e7;

    private DenseColumns() {}

    /**
     * Eliminates the first columns of a symmetric block (Cholesky, lower triangle, in place); the rest is left as what they pass on.
     *
     * @param width how many to eliminate
     * @return the first column whose pivot is not positive, or -1
     */
    static int eliminate(double[][] columns, int width, boolean share) {
        for (int start = 0; start < width; start += PANEL) {
            int end = Math.min(width, start + PANEL);
            int bad = panel(columns, start, end);
            if (bad >= 0) return bad;
            passOn(columns, start, end, share);
        }
        return -1;
    }

    private static int panel(double[][] columns, int start, int end) {
        int height = columns.length;
        for (int j = start; j < end; j++) {
            double[] column = columns[j];
            subtract(column, columns, start, j, j, j, height);
            double pivot = column[j];
            if (!(pivot > 0)) return j;
            double root = Math.sqrt(pivot);
            column[j] = root;
            double inverse = 1 / root;
            for (int t = j + 1; t < height; t++) column[t] *= inverse;
        }
        return -1;
    }

    private static void passOn(double[][] columns, int start, int end, boolean share) {
        int height = columns.length;
        double work = (double) (height - end) * (height - end) * (end - start);
        if (!share || work < WORTH_SHARING_OUT) {
            passOn(columns, start, end, end, height);
            return;
        }
        int parts = (height - end + COLUMNS_AT_ONCE - 1) / COLUMNS_AT_ONCE;
        IntStream.range(0, parts).parallel().forEach(part -> {
            int from = end + part * COLUMNS_AT_ONCE;
            passOn(columns, start, end, from, Math.min(height, from + COLUMNS_AT_ONCE));
        });
    }

    /** Takes the columns start to end from the columns from to to. */
    private static void passOn(double[][] columns, int start, int end, int from, int to) {
        int height = columns.length;
        for (int top = from; top < height; top += ROWS_AT_ONCE) {
            int bottom = Math.min(height, top + ROWS_AT_ONCE);
            int last = Math.min(to, bottom);
            int j = from;
            // Above the diagonal a few elements are written that nobody reads.
            for (; j + FOUR <= last; j += FOUR) {
                subtractFromFour(columns, j, start, end, Math.max(top, j), bottom);
            }
            for (; j < last; j++) subtract(columns[j], columns, start, end, j, Math.max(top, j), bottom);
        }
    }

    private static void subtractFromFour(double[][] columns, int j, int start, int end, int top, int bottom) {
        int p = start;
        for (; p + FOUR <= end; p += FOUR) {
            fourFromFour(columns, j, columns, p, columns, p, j, top, bottom);
        }
        for (; p < end; p++) {
            for (int i = j; i < j + FOUR; i++) subtractOne(columns[i], columns[p], columns[p][i], top, bottom);
        }
    }

    /** Takes from the target each of the columns start to end, times its element in a row, over the rows top to bottom. */
    private static void subtract(
            double[] target, double[][] columns, int start, int end, int row, int top, int bottom) {
        int p = start;
        for (; p + FOUR <= end; p += FOUR) {
            four(
                    target,
                    columns[p],
                    columns[p + 1],
                    columns[p + 2],
                    columns[p + 3],
                    columns[p][row],
                    columns[p + 1][row],
                    columns[p + 2][row],
                    columns[p + 3][row],
                    top,
                    bottom);
        }
        for (; p < end; p++) subtractOne(target, columns[p], columns[p][row], top, bottom);
    }

    /**
     * Takes from four targets, which begin at j, four sources, which begin at p: the factor of source p + s for target j + i is
     * factors[f + s][row + i].
     */
    static void fourFromFour(
            double[][] targets,
            int j,
            double[][] sources,
            int p,
            double[][] factors,
            int f,
            int row,
            int top,
            int bottom) {
        double[] k = factors[f];
        double[] l = factors[f + 1];
        double[] m = factors[f + 2];
        double[] n = factors[f + 3];
        fourByFour(
                targets[j],
                targets[j + 1],
                targets[j + 2],
                targets[j + 3],
                sources[p],
                sources[p + 1],
                sources[p + 2],
                sources[p + 3],
                k[row],
                l[row],
                m[row],
                n[row],
                k[row + 1],
                l[row + 1],
                m[row + 1],
                n[row + 1],
                k[row + 2],
                l[row + 2],
                m[row + 2],
                n[row + 2],
                k[row + 3],
                l[row + 3],
                m[row + 3],
                n[row + 3],
                top,
                bottom);
    }

    /** Each source is read once for four targets. */
    static void fourByFour(
            double[] w,
            double[] x,
            double[] y,
            double[] z,
            double[] a,
            double[] b,
            double[] c,
            double[] d,
            double wa,
            double wb,
            double wc,
            double wd,
            double xa,
            double xb,
            double xc,
            double xd,
            double ya,
            double yb,
            double yc,
            double yd,
            double za,
            double zb,
            double zc,
            double zd,
            int top,
            int bottom) {
        for (int t = top; t < bottom; t++) {
            double at = a[t];
            double bt = b[t];
            double ct = c[t];
            double dt = d[t];
            w[t] -= (wa * at + wb * bt) + (wc * ct + wd * dt);
            x[t] -= (xa * at + xb * bt) + (xc * ct + xd * dt);
            y[t] -= (ya * at + yb * bt) + (yc * ct + yd * dt);
            z[t] -= (za * at + zb * bt) + (zc * ct + zd * dt);
        }
    }

    /** target -= sum of four columns times a factor each. */
    static void four(
            double[] target,
            double[] a,
            double[] b,
            double[] c,
            double[] d,
            double xa,
            double xb,
            double xc,
            double xd,
            int top,
            int bottom) {
        for (int t = top; t < bottom; t++) target[t] -= (xa * a[t] + xb * b[t]) + (xc * c[t] + xd * d[t]);
    }

    static void subtractOne(double[] target, double[] column, double factor, int top, int bottom) {
        for (int t = top; t < bottom; t++) target[t] -= factor * column[t];
    }
}
