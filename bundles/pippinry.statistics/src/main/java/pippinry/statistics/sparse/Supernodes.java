package pippinry.statistics.sparse;

import java.util.Arrays;

/**
 * Runs of columns of the factor that have the same rows below them and so can be worked on as one dense block. Small runs are
 * joined to the next where few zeros come in by it: C. Ashcraft and R. Grimes (1989) The influence of relaxed supernode
 * partitions on the multifrontal method, ACM Transactions on Mathematical Software 15:291-309.
 */
final class Supernodes {
    private static final int[] WIDTHS = {4, 16, 48};
    private static final double[] ZEROS = {0.8, 0.2, 0.05};
    private static final double ZEROS_OF_WIDE = 0.01;

    /** The first column of each run; one more entry than runs. */
    final int[] first;

    private Supernodes(int[] first) {
        this.first = first;
    }

    static Supernodes of(EliminationTree tree) {
        int[] fundamental = fundamental(tree);
        return new Supernodes(joined(fundamental, tree));
    }

    private static int[] fundamental(EliminationTree tree) {
        int size = tree.parent.length;
        int[] children = new int[size];
        for (int parent : tree.parent) if (parent != EliminationTree.ROOT) children[parent]++;
        int[] first = new int[size + 1];
        int runs = 0;
        for (int column = 0; column < size; column++) {
            boolean goesOn = column > 0
                    && tree.parent[column - 1] == column
                    && children[column] == 1
                    && tree.count[column - 1] == tree.count[column] + 1;
            if (!goesOn) first[runs++] = column;
        }
        first[runs] = size;
        return Arrays.copyOf(first, runs + 1);
    }

    /** Joins a run to the one before it, which must lead straight into it. */
    private static int[] joined(int[] fundamental, EliminationTree tree) {
        int[] first = new int[fundamental.length];
        double[] zeros = new double[fundamental.length];
        int runs = 0;
        for (int f = 0; f + 1 < fundamental.length; f++) {
            int start = fundamental[f];
            int end = fundamental[f + 1];
            double own = 0;
            while (runs > 0 && tree.parent[start - 1] == start) {
                int before = first[runs - 1];
                double added = (double) (start - before) * (tree.count[start] - (tree.count[start - 1] - 1));
                double all = zeros[runs - 1] + own + added;
                if (!fewZeros(all, end - before, start - before + tree.count[start])) break;
                own = all;
                start = before;
                runs--;
            }
            first[runs] = start;
            zeros[runs++] = own;
        }
        first[runs] = tree.parent.length;
        return Arrays.copyOf(first, runs + 1);
    }

    private static boolean fewZeros(double zeros, int width, double height) {
        double elements = width * (height - (width - 1) / 2.0);
        for (int i = 0; i < WIDTHS.length; i++) if (width <= WIDTHS[i]) return zeros <= ZEROS[i] * elements;
        return zeros <= ZEROS_OF_WIDE * elements;
    }

    int count() {
        return first.length - 1;
    }

    int width(int run) {
        return first[run + 1] - first[run];
    }
}
