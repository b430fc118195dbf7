package pippinry.statistics.sparse;

import java.util.Arrays;

/** Elements of a symmetric matrix as they come, in any order and any number at a place; {@link #sum()} adds up those at one place. */
public final class LooseElements {
    private final int size;
    private int count;
    private int[] row = new int[1024];
    private int[] column = new int[1024];
    private double[] value = new double[1024];

    /** @param size of the matrix; its diagonal is there even where nothing is added */
    public LooseElements(int size) {
        this.size = size;
        for (int i = 0; i < size; i++) add(i, i, 0);
    }

    /** Adds to the element at a place and, unless on the diagonal, to its mirror image. */
    public void add(int one, int other, double amount) {
        if (count == row.length) {
            int more = Math.addExact(count, count / 2);
            row = Arrays.copyOf(row, more);
            column = Arrays.copyOf(column, more);
            value = Arrays.copyOf(value, more);
        }
        row[count] = Math.max(one, other);
        column[count] = Math.min(one, other);
        value[count++] = amount;
    }

    /** The matrix. */
    public SparseSymmetric sum() {
        int[] byRow = sorted(identity(), row);
        int[] byColumn = sorted(byRow, column);
        int[] start = new int[size + 1];
        int[] rows = new int[count];
        double[] values = new double[count];
        int kept = 0;
        for (int at = 0; at < count; at++) {
            int element = byColumn[at];
            boolean again =
                    at > 0 && row[byColumn[at - 1]] == row[element] && column[byColumn[at - 1]] == column[element];
            if (!again) {
                rows[kept++] = row[element];
                start[column[element] + 1] = kept;
            }
            values[kept - 1] += value[element];
        }
        return new SparseSymmetric(start, Arrays.copyOf(rows, kept), Arrays.copyOf(values, kept));
    }

    private int[] identity() {
        int[] identity = new int[count];
        for (int i = 0; i < count; i++) identity[i] = i;
        return identity;
    }

    private int[] sorted(int[] elements, int[] key) {
        int[] start = new int[size + 1];
        for (int element : elements) start[key[element] + 1]++;
        for (int k = 0; k < size; k++) start[k + 1] += start[k];
        int[] sorted = new int[count];
        for (int element : elements) sorted[start[key[element]]++] = element;
        return sorted;
    }
}
