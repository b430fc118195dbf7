package pippinry.statistics.sparse;

import java.util.Arrays;

/**
 * The lower triangle of a symmetric matrix, column by column: rows ascending, the diagonal element first in each column and always
 * there. The arrays are not copied.
 *
 * @param columnStart where each column begins in the other arrays; one more entry than columns
 * @param rows the rows of the elements
 * @param values the elements
 */
public record SparseSymmetric(int[] columnStart, int[] rows, double[] values) {

    public SparseSymmetric {
        if (rows.length < columnStart[columnStart.length - 1] || values.length < rows.length) {
            throw new IllegalArgumentException("as many rows and values as the columns say");
        }
        for (int column = 0; column + 1 < columnStart.length; column++) {
            boolean diagonal = columnStart[column] < columnStart[column + 1] && rows[columnStart[column]] == column;
            if (!diagonal) {
                throw new IllegalArgumentException("column " + column + " begins with its diagonal element");
            }
        }
    }

    public int size() {
        return columnStart.length - 1;
    }

    /** How many elements are kept. */
    public int elements() {
        return columnStart[size()];
    }

    /** The matrix times a vector. */
    public double[] times(double[] vector) {
        double[] product = new double[size()];
        for (int column = 0; column < size(); column++) {
            product[column] += values[columnStart[column]] * vector[column];
            for (int at = columnStart[column] + 1; at < columnStart[column + 1]; at++) {
                product[rows[at]] += values[at] * vector[column];
                product[column] += values[at] * vector[rows[at]];
            }
        }
        return product;
    }

    /** Where the element of a row and a column stands among the values; negative when there is none. */
    public int place(int one, int other) {
        int column = Math.min(one, other);
        int found = Arrays.binarySearch(rows, columnStart[column], columnStart[column + 1], Math.max(one, other));
        return found < 0 ? -1 : found;
    }

    /** The same places with other values. */
    public SparseSymmetric withValues(double[] other) {
        return new SparseSymmetric(columnStart, rows, other);
    }
}
