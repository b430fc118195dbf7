package pippinry.exchange.internal.tables;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pippinry.model.Row;
import pippinry.model.Table;
import pippinry.model.record.Kind;

/** What one import brings to one table, beside what is on file there. */
final class TableRows<T extends Record> {

    /** What becomes of a row. */
    enum Fate {
        NEW,
        CHANGED,
        ON_FILE
    }

    private final Kind<T> kind;
    private final Table<T> onFile;
    private final Map<String, Origin> keys = new HashMap<>();
    private Map<T, int[]> alike;

    TableRows(Kind<T> kind, Table<T> onFile) {
        this.kind = kind;
        this.onFile = onFile;
    }

    Kind<T> kind() {
        return kind;
    }

    Optional<T> onFile(T row) {
        return kind.keyOf(row).flatMap(onFile::find).map(Row::value);
    }

    /** Where a row with this key stood before in the same import; from now on it stands here. */
    Optional<Origin> before(T row, Origin here) {
        return kind.keyOf(row).map(key -> keys.putIfAbsent(key, here));
    }

    Fate fate(T row) {
        if (kind.key().isEmpty()) {
            return isCounted(row) ? Fate.ON_FILE : Fate.NEW;
        }
        Optional<T> old = onFile(row);
        return old.isEmpty() ? Fate.NEW : old.get().equals(row) ? Fate.ON_FILE : Fate.CHANGED;
    }

    /** Rows without a key may be alike: a file with two of them beside one on file brings one more. */
    private boolean isCounted(T row) {
        if (onFile.size() == 0) {
            return false;
        }
        if (alike == null) {
            alike = new HashMap<>();
            onFile.forEach(known -> alike.computeIfAbsent(known.value(), any -> new int[1])[0]++);
        }
        int[] left = alike.get(row);
        return left != null && left[0]-- > 0;
    }

    /** The columns in which the row differs from the one on file. */
    List<String> differences(T row) {
        return kind.columns().stream()
                .filter(column -> onFile(row)
                        .filter(old -> !kind.cell(old, column).equals(kind.cell(row, column)))
                        .isPresent())
                .map(column -> column + " '" + kind.cell(onFile(row).orElseThrow(), column) + "' on file, '"
                        + kind.cell(row, column) + "' here")
                .toList();
    }
}
