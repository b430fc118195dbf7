package pippinry.statistics.sparse;

import java.util.Arrays;

/**
 * How to factor every symmetric matrix with elements at the same places: the order of elimination and the shape of the dense
 * blocks, each of which gathers what its children pass on to it. Made once, used for each set of values.
 */
public final class EliminationPlan {
    private static final int ROOT = EliminationTree.ROOT;

    final int size;
    /** The variable eliminated at each place. */
    final int[] order;

    final Supernodes blocks;
    /** For each block the places of the rows below its own columns, ascending. */
    final int[][] below;
    /** For each block where its rows below stand in its parent's block. */
    final int[][] inParent;

    final int[] parent;
    final int[] firstChild;
    final int[] sibling;
    /** For each place, where its elements begin in the next two. */
    final int[] elementStart;
    /** The row of an element within its block. */
    final int[] elementRow;
    /** Where the element stands among the matrix's values. */
    final int[] elementValue;

    private EliminationPlan(SparseSymmetric matrix, EliminationTree tree) {
        this.size = matrix.size();
        this.order = tree.order;
        this.blocks = Supernodes.of(tree);
        this.parent = new int[blocks.count()];
        this.firstChild = new int[blocks.count()];
        this.sibling = new int[blocks.count()];
        this.below = new int[blocks.count()][];
        this.inParent = new int[blocks.count()][];
        this.elementStart = new int[size + 1];
        this.elementRow = new int[matrix.elements()];
        this.elementValue = new int[matrix.elements()];
        placeElements(matrix);
        linkBlocks(tree);
        shapeBlocks();
    }

    /** Finds an order for the places of this matrix; its values do not matter. */
    public static EliminationPlan of(SparseSymmetric matrix) {
        return new EliminationPlan(matrix, EliminationTree.of(matrix, MinimumDegree.of(matrix)));
    }

    /** How many elements the factor has, zeros that the dense blocks bring in among them. */
    public long elementsOfFactor() {
        long elements = 0;
        for (int block = 0; block < blocks.count(); block++) {
            long width = blocks.width(block);
            elements += width * (width + 1) / 2 + width * below[block].length;
        }
        return elements;
    }

    /** Sorts the elements by the earlier of their two places; their rows are the later places for now. */
    private void placeElements(SparseSymmetric matrix) {
        int[] place = EliminationTree.inverse(order);
        for (int pass = 0; pass < 2; pass++) {
            int[] next = Arrays.copyOf(elementStart, size);
            for (int column = 0; column < size; column++) {
                for (int at = matrix.columnStart()[column]; at < matrix.columnStart()[column + 1]; at++) {
                    int a = place[column];
                    int b = place[matrix.rows()[at]];
                    int earlier = Math.min(a, b);
                    if (pass == 0) {
                        elementStart[earlier + 1]++;
                    } else {
                        elementRow[next[earlier]] = Math.max(a, b);
                        elementValue[next[earlier]++] = at;
                    }
                }
            }
            if (pass == 0) for (int i = 0; i < size; i++) elementStart[i + 1] += elementStart[i];
        }
    }

    private void linkBlocks(EliminationTree tree) {
        int[] blockOf = new int[size];
        for (int block = 0; block < blocks.count(); block++) {
            Arrays.fill(blockOf, blocks.first[block], blocks.first[block + 1], block);
        }
        Arrays.fill(firstChild, ROOT);
        for (int block = blocks.count() - 1; block >= 0; block--) {
            int next = tree.parent[blocks.first[block + 1] - 1];
            parent[block] = next == ROOT ? ROOT : blockOf[next];
            if (next == ROOT) continue;
            sibling[block] = firstChild[parent[block]];
            firstChild[parent[block]] = block;
        }
    }

    private void shapeBlocks() {
        int[] seen = new int[size];
        int[] local = new int[size];
        int[] gathered = new int[size];
        Arrays.fill(seen, ROOT);
        for (int block = 0; block < blocks.count(); block++) {
            int count = gather(block, seen, gathered);
            below[block] = Arrays.copyOf(gathered, count);
            Arrays.sort(below[block]);
            number(block, local);
            for (int at = elementStart[blocks.first[block]]; at < elementStart[blocks.first[block + 1]]; at++) {
                elementRow[at] = local[elementRow[at]];
            }
            for (int child = firstChild[block]; child != ROOT; child = sibling[child]) {
                inParent[child] =
                        Arrays.stream(below[child]).map(row -> local[row]).toArray();
            }
        }
    }

    /** The rows below a block: those of its elements and of its children. */
    private int gather(int block, int[] seen, int[] gathered) {
        int end = blocks.first[block + 1];
        int count = 0;
        for (int at = elementStart[blocks.first[block]]; at < elementStart[end]; at++) {
            int row = elementRow[at];
            if (row >= end && seen[row] != block) {
                seen[row] = block;
                gathered[count++] = row;
            }
        }
        for (int child = firstChild[block]; child != ROOT; child = sibling[child]) {
            for (int row : below[child]) {
                if (row >= end && seen[row] != block) {
                    seen[row] = block;
                    gathered[count++] = row;
                }
            }
        }
        return count;
    }

    private void number(int block, int[] local) {
        int width = blocks.width(block);
        for (int i = 0; i < width; i++) local[blocks.first[block] + i] = i;
        for (int i = 0; i < below[block].length; i++) local[below[block][i]] = width + i;
    }

    int height(int block) {
        return blocks.width(block) + below[block].length;
    }
}
