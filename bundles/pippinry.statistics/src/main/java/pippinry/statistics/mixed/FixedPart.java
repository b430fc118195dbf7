package pippinry.statistics.mixed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/** The columns of the fixed effects, mostly zero, with those that depend on columns before them marked. */
final class FixedPart {
    private static final double DEPENDENT = 1e-9;

    private final int records;
    private final List<String> names = new ArrayList<>();
    /** By record its places and values, column numbers as they were added. */
    private final int[][] places;

    private final double[][] values;
    private final int[] count;
    private int[] kept = {};

    FixedPart(int records) {
        this.records = records;
        this.places = new int[records][2];
        this.values = new double[records][2];
        this.count = new int[records];
    }

    int add(String name) {
        names.add(name);
        return names.size() - 1;
    }

    void put(int record, int column, double value) {
        if (value == 0) return;
        int at = count[record]++;
        if (at == places[record].length) {
            places[record] = Arrays.copyOf(places[record], 2 * at);
            values[record] = Arrays.copyOf(values[record], 2 * at);
        }
        places[record][at] = column;
        values[record][at] = value;
    }

    /** Finds dependent columns by Cholesky elimination of X'X, first come first kept. */
    BitSet dependent() {
        int columns = names.size();
        double[][] cross = new double[columns][columns];
        for (int record = 0; record < records; record++) {
            for (int a = 0; a < count[record]; a++) {
                for (int b = 0; b < count[record]; b++) {
                    cross[places[record][a]][places[record][b]] += values[record][a] * values[record][b];
                }
            }
        }
        BitSet dependent = new BitSet();
        for (int j = 0; j < columns; j++) {
            double whole = cross[j][j];
            double left = whole;
            for (int k = 0; k < j; k++) if (!dependent.get(k)) left -= cross[k][j] * cross[k][j];
            if (!(left > DEPENDENT * whole)) {
                dependent.set(j);
                continue;
            }
            double root = Math.sqrt(left);
            for (int i = j + 1; i < columns; i++) {
                double value = cross[j][i];
                for (int k = 0; k < j; k++) if (!dependent.get(k)) value -= cross[k][j] * cross[k][i];
                cross[j][i] = value / root;
            }
        }
        return dependent;
    }

    /** Drops the dependent columns; the others close ranks. */
    void settle() {
        BitSet dependent = dependent();
        int[] number = new int[names.size()];
        int next = 0;
        kept = new int[names.size() - dependent.cardinality()];
        for (int column = 0; column < number.length; column++) {
            number[column] = dependent.get(column) ? -1 : next;
            if (!dependent.get(column)) kept[next++] = column;
        }
        for (int record = 0; record < records; record++) {
            int left = 0;
            for (int at = 0; at < count[record]; at++) {
                int column = number[places[record][at]];
                if (column < 0) continue;
                places[record][left] = column;
                values[record][left++] = values[record][at];
            }
            count[record] = left;
        }
    }

    int columns() {
        return kept.length;
    }

    /** Names of the columns kept. */
    List<String> names() {
        return Arrays.stream(kept).mapToObj(names::get).toList();
    }

    int count(int record) {
        return count[record];
    }

    int column(int record, int at) {
        return places[record][at];
    }

    double value(int record, int at) {
        return values[record][at];
    }
}
