package pippinry.statistics.sparse;

import java.util.Arrays;

/**
 * An order of elimination that keeps the factor sparse: P. R. Amestoy, T. A. Davis and I. S. Duff (1996) An approximate minimum
 * degree ordering algorithm, SIAM Journal on Matrix Analysis and Applications 17:886-905.
 *
 * <p>Eliminating a variable joins all its neighbours; the neighbours are kept as one element instead of as pairs (a quotient
 * graph). Next goes the variable whose degree, bounded from above, is smallest. Variables with the same neighbours are merged
 * (supervariables); an element inside another is absorbed. Rows with more than 10 √n elements are left for last. Cost: in
 * practice a few times the elements of the matrix.
 */
final class MinimumDegree {
    private static final int NONE = -1;
    private static final double DENSE = 10;
    private static final int DENSE_AT_LEAST = 16;

    private final int size;
    private final int[][] variables;
    private final int[][] elements;
    private final int[] variableCount;
    private final int[] elementCount;
    /** How many variables a supervariable stands for; 0 once it is merged or eliminated. */
    private final int[] weight;

    private final int[] degree;
    /** Members of an element, null when it is none or was absorbed. */
    private final int[][] members;

    private final int[] elementSize;
    private final int[] outside;
    private int tag = 1;
    private final boolean[] inPivot;
    private final DegreeLists lists;
    private final int[] firstMerged;
    private final int[] nextMerged;
    private final int[] hash;
    private final int[] order;
    private int ordered;
    private int left;

    private MinimumDegree(SparseSymmetric matrix) {
        this.size = matrix.size();
        this.variables = neighbours(matrix);
        this.elements = new int[size][];
        this.variableCount = new int[size];
        this.elementCount = new int[size];
        this.weight = new int[size];
        this.degree = new int[size];
        this.members = new int[size][];
        this.elementSize = new int[size];
        this.outside = new int[size];
        this.inPivot = new boolean[size];
        this.lists = new DegreeLists(size);
        this.firstMerged = new int[size];
        this.nextMerged = new int[size];
        this.hash = new int[size];
        this.order = new int[size];
        Arrays.fill(weight, 1);
        Arrays.fill(firstMerged, NONE);
        Arrays.fill(nextMerged, NONE);
    }

    /** The variables in the order in which to eliminate them. */
    static int[] of(SparseSymmetric matrix) {
        MinimumDegree reckoning = new MinimumDegree(matrix);
        reckoning.run();
        return reckoning.order;
    }

    private static int[][] neighbours(SparseSymmetric matrix) {
        int[] count = new int[matrix.size()];
        eachPair(matrix, (row, column) -> {
            count[row]++;
            count[column]++;
        });
        int[][] neighbours = new int[matrix.size()][];
        for (int i = 0; i < neighbours.length; i++) {
            neighbours[i] = new int[count[i]];
            count[i] = 0;
        }
        eachPair(matrix, (row, column) -> {
            neighbours[row][count[row]++] = column;
            neighbours[column][count[column]++] = row;
        });
        return neighbours;
    }

    private interface Pair {
        void take(int row, int column);
    }

    private static void eachPair(SparseSymmetric matrix, Pair pair) {
        for (int column = 0; column < matrix.size(); column++) {
            for (int at = matrix.columnStart()[column] + 1; at < matrix.columnStart()[column + 1]; at++) {
                pair.take(matrix.rows()[at], column);
            }
        }
    }

    private void run() {
        int[] last = leaveDense();
        while (left > 0) {
            int pivot = lists.takeLeast();
            int[] joined = join(pivot);
            reckonOutside(joined);
            update(pivot, joined);
            mergeAlike(joined);
            close(pivot, joined);
        }
        for (int dense : last) order[ordered++] = dense;
    }

    /** Takes rows with very many elements out of the graph; the rest go on the lists. */
    private int[] leaveDense() {
        int many = (int) Math.max(DENSE_AT_LEAST, DENSE * Math.sqrt(size));
        int[] dense = new int[size];
        int count = 0;
        for (int i = 0; i < size; i++) {
            if (variables[i].length > many) {
                weight[i] = 0;
                dense[count++] = i;
            }
        }
        for (int i = 0; i < size; i++) {
            if (weight[i] == 0) continue;
            int kept = 0;
            for (int j : variables[i]) if (weight[j] > 0) variables[i][kept++] = j;
            variableCount[i] = kept;
            degree[i] = kept;
            elements[i] = new int[Math.min(4, Math.max(1, kept))];
            lists.add(i, kept);
            left++;
        }
        return Arrays.copyOf(dense, count);
    }

    /** The neighbours of the pivot, its elements absorbed. */
    private int[] join(int pivot) {
        int[] joined = new int[Math.max(4, degree[pivot])];
        int count = 0;
        left -= weight[pivot];
        inPivot[pivot] = true;
        for (int at = 0; at < variableCount[pivot]; at++) {
            int i = variables[pivot][at];
            if (weight[i] > 0 && !inPivot[i]) {
                inPivot[i] = true;
                if (count == joined.length) joined = Arrays.copyOf(joined, 2 * count);
                joined[count++] = i;
            }
        }
        for (int at = 0; at < elementCount[pivot]; at++) {
            int element = elements[pivot][at];
            if (members[element] == null) continue;
            for (int i : members[element]) {
                if (weight[i] > 0 && !inPivot[i]) {
                    inPivot[i] = true;
                    if (count == joined.length) joined = Arrays.copyOf(joined, 2 * count);
                    joined[count++] = i;
                }
            }
            members[element] = null;
        }
        variables[pivot] = null;
        elements[pivot] = null;
        for (int at = 0; at < count; at++) lists.remove(joined[at], degree[joined[at]]);
        return Arrays.copyOf(joined, count);
    }

    /** For each element that touches the pivot's neighbours, how much of it lies outside them. */
    private void reckonOutside(int[] joined) {
        tag = nextTag();
        for (int i : joined) {
            for (int at = 0; at < elementCount[i]; at++) {
                int element = elements[i][at];
                if (members[element] == null) continue;
                if (outside[element] < tag) outside[element] = tag + elementSize[element];
                outside[element] -= weight[i];
            }
        }
    }

    private int nextTag() {
        int next = tag + 2 * size + 2;
        if (next > Integer.MAX_VALUE - 2 * size - 2) {
            Arrays.fill(outside, 0);
            return 1;
        }
        return next;
    }

    private void update(int pivot, int[] joined) {
        int joinedWeight = 0;
        for (int i : joined) joinedWeight += weight[i];
        for (int i : joined) {
            int others = joinedWeight - weight[i];
            int outer = compress(i, pivot);
            if (elementCount[i] == 1 && variableCount[i] == 0) {
                // Nothing but the pivot's element is left of it: it may go together with the pivot.
                joinedWeight -= weight[i];
                left -= weight[i];
                merge(i, pivot);
                continue;
            }
            degree[i] = Math.min(Math.min(left - weight[i], degree[i] + others), outer + others);
        }
    }

    /** Drops what the pivot's element covers from the lists of i and puts that element in front; the degree outside it. */
    private int compress(int i, int pivot) {
        int outer = 0;
        int code = pivot;
        int kept = 0;
        int[] own = elements[i];
        int count = elementCount[i];
        int first = NONE;
        for (int at = 0; at < count; at++) {
            int element = own[at];
            if (members[element] == null) continue;
            int out = outside[element] - tag;
            if (out == 0) {
                members[element] = null;
                continue;
            }
            outer += out;
            code += element;
            if (kept == 0) first = element;
            own[kept++] = element;
        }
        if (kept == own.length) own = elements[i] = Arrays.copyOf(own, 2 * kept + 1);
        if (kept > 0) own[kept] = first;
        own[0] = pivot;
        elementCount[i] = kept + 1;
        int keptVariables = 0;
        for (int at = 0; at < variableCount[i]; at++) {
            int j = variables[i][at];
            if (weight[j] == 0 || inPivot[j]) continue;
            outer += weight[j];
            code += j;
            variables[i][keptVariables++] = j;
        }
        variableCount[i] = keptVariables;
        hash[i] = code & Integer.MAX_VALUE;
        return outer;
    }

    /** Neighbours of the pivot that have the same neighbours themselves become one. */
    private void mergeAlike(int[] joined) {
        int[] alive = Arrays.stream(joined).filter(i -> weight[i] > 0).toArray();
        if (alive.length < 2) return;
        long[] byHash = new long[alive.length];
        for (int at = 0; at < alive.length; at++) byHash[at] = (long) hash[alive[at]] << 32 | at;
        Arrays.sort(byHash);
        for (int start = 0; start < byHash.length; ) {
            int end = start + 1;
            while (end < byHash.length && byHash[end] >> 32 == byHash[start] >> 32) end++;
            if (end - start > 1) compareBucket(alive, byHash, start, end);
            start = end;
        }
    }

    private void compareBucket(int[] alive, long[] byHash, int start, int end) {
        for (int a = start; a < end; a++) {
            int i = alive[(int) byHash[a]];
            if (weight[i] == 0) continue;
            tag = nextTag();
            mark(elements[i], elementCount[i]);
            mark(variables[i], variableCount[i]);
            for (int b = a + 1; b < end; b++) {
                int j = alive[(int) byHash[b]];
                boolean same = weight[j] > 0
                        && elementCount[i] == elementCount[j]
                        && variableCount[i] == variableCount[j]
                        && marked(elements[j], elementCount[j])
                        && marked(variables[j], variableCount[j]);
                if (same) {
                    degree[i] -= weight[j];
                    merge(j, i);
                }
            }
        }
    }

    private void mark(int[] list, int count) {
        for (int at = 0; at < count; at++) outside[list[at]] = tag;
    }

    private boolean marked(int[] list, int count) {
        for (int at = 0; at < count; at++) if (outside[list[at]] != tag) return false;
        return true;
    }

    private void merge(int gone, int into) {
        weight[into] += weight[gone];
        weight[gone] = 0;
        variables[gone] = null;
        elements[gone] = null;
        nextMerged[gone] = firstMerged[into];
        firstMerged[into] = gone;
    }

    /** The pivot becomes an element, and what is left of its neighbours goes back on the lists. */
    private void close(int pivot, int[] joined) {
        int kept = 0;
        int total = 0;
        for (int i : joined) {
            inPivot[i] = false;
            if (weight[i] == 0) continue;
            joined[kept++] = i;
            total += weight[i];
        }
        for (int at = 0; at < kept; at++) {
            int i = joined[at];
            degree[i] = Math.max(0, Math.min(degree[i], left - weight[i]));
            lists.add(i, degree[i]);
        }
        inPivot[pivot] = false;
        weight[pivot] = 0;
        members[pivot] = kept == 0 ? null : Arrays.copyOf(joined, kept);
        elementSize[pivot] = total;
        write(pivot);
    }

    private void write(int pivot) {
        int[] stack = {pivot};
        int depth = 1;
        while (depth > 0) {
            int i = stack[--depth];
            order[ordered++] = i;
            for (int j = firstMerged[i]; j != NONE; j = nextMerged[j]) {
                if (depth == stack.length) stack = Arrays.copyOf(stack, 2 * depth);
                stack[depth++] = j;
            }
        }
    }
}
