package pippinry.statistics.sparse;

import java.util.Arrays;

/**
 * Which column of the factor first needs each column: J. W. H. Liu (1990) The role of elimination trees in sparse factorization,
 * SIAM Journal on Matrix Analysis and Applications 11:134-172. Columns are renumbered so that each subtree is a run of numbers.
 */
final class EliminationTree {
    static final int ROOT = -1;

    /** The matrix's variable at each place of the elimination. */
    final int[] order;
    /** The column that needs this one next, {@link #ROOT} for none. */
    final int[] parent;
    /** Elements of the column in the factor, diagonal included. */
    final int[] count;

    private EliminationTree(int[] order, int[] parent, int[] count) {
        this.order = order;
        this.parent = parent;
        this.count = count;
    }

    static EliminationTree of(SparseSymmetric matrix, int[] order) {
        int[][] above = above(matrix, order);
        int[] parent = parents(above);
        int[] post = postorder(parent);
        int[] renumbered = new int[order.length];
        for (int i = 0; i < post.length; i++) renumbered[i] = order[post[i]];
        int[][] rows = above(matrix, renumbered);
        int[] parents = parents(rows);
        return new EliminationTree(renumbered, parents, counts(rows, parents));
    }

    /** For each place, the earlier places whose variables it touches. */
    static int[][] above(SparseSymmetric matrix, int[] order) {
        int[] place = inverse(order);
        int[] count = new int[order.length];
        for (int pass = 0; ; pass++) {
            int[][] above = pass == 0 ? null : new int[order.length][];
            if (pass == 1) {
                for (int i = 0; i < above.length; i++) above[i] = new int[count[i]];
                Arrays.fill(count, 0);
            }
            for (int column = 0; column < order.length; column++) {
                for (int at = matrix.columnStart()[column] + 1; at < matrix.columnStart()[column + 1]; at++) {
                    int a = place[column];
                    int b = place[matrix.rows()[at]];
                    int later = Math.max(a, b);
                    if (pass == 1) above[later][count[later]] = Math.min(a, b);
                    count[later]++;
                }
            }
            if (pass == 1) return above;
        }
    }

    static int[] inverse(int[] order) {
        int[] place = new int[order.length];
        for (int at = 0; at < order.length; at++) place[order[at]] = at;
        return place;
    }

    private static int[] parents(int[][] above) {
        int[] parent = new int[above.length];
        int[] shortcut = new int[above.length];
        Arrays.fill(parent, ROOT);
        Arrays.fill(shortcut, ROOT);
        for (int row = 0; row < above.length; row++) {
            for (int earlier : above[row]) {
                int at = earlier;
                while (at != ROOT && at < row) {
                    int next = shortcut[at];
                    shortcut[at] = row;
                    if (next == ROOT) parent[at] = row;
                    at = next;
                }
            }
        }
        return parent;
    }

    private static int[] postorder(int[] parent) {
        int size = parent.length;
        int[] firstChild = new int[size];
        int[] sibling = new int[size];
        Arrays.fill(firstChild, ROOT);
        for (int i = size - 1; i >= 0; i--) {
            if (parent[i] == ROOT) continue;
            sibling[i] = firstChild[parent[i]];
            firstChild[parent[i]] = i;
        }
        int[] post = new int[size];
        int[] stack = new int[size];
        int written = 0;
        for (int root = 0; root < size; root++) {
            if (parent[root] != ROOT) continue;
            int depth = 0;
            stack[depth++] = root;
            while (depth > 0) {
                int at = stack[depth - 1];
                int child = firstChild[at];
                if (child == ROOT) {
                    post[written++] = at;
                    depth--;
                } else {
                    firstChild[at] = sibling[child];
                    stack[depth++] = child;
                }
            }
        }
        return post;
    }

    /** Walks, for each row, up the tree from its elements: every step is one element of the factor. */
    private static int[] counts(int[][] above, int[] parent) {
        int[] count = new int[parent.length];
        int[] seen = new int[parent.length];
        Arrays.fill(count, 1);
        Arrays.fill(seen, ROOT);
        for (int row = 0; row < above.length; row++) {
            seen[row] = row;
            for (int earlier : above[row]) {
                for (int at = earlier; seen[at] != row; at = parent[at]) {
                    count[at]++;
                    seen[at] = row;
                }
            }
        }
        return count;
    }
}
