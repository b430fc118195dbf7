package pippinry.model.record;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * Reads many records of a kind, each cell by cell. Cells that are alike become one object, which saves both time and
 * memory. For one thread.
 *
 * @param <T> the record class
 */
public final class RowReader<T extends Record> {

    /** Beyond this a column has few cells that are alike; it begins to remember anew. */
    private static final int REMEMBERED = 2_000;

    private final Kind<T> kind;
    private final Object[] empty;
    private final Object[] values;
    private final Map<String, Integer> places = new HashMap<>();
    private final Map<String, Object>[] known;
    private CellRefused refused;

    public RowReader(Kind<T> kind) {
        this.kind = kind;
        int columns = kind.columns().size();
        this.empty = new Object[columns];
        this.values = new Object[columns];
        this.known = maps(columns);
        for (int i = 0; i < columns; i++) {
            Column column = kind.columns().get(i);
            places.put(column.name(), i);
            empty[i] = column.needed() ? null : kind.parse(column, "");
        }
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static Map<String, Object>[] maps(int columns) {
        Map[] maps = new Map[columns];
        Arrays.setAll(maps, i -> new HashMap<>());
        return maps;
    }

    /** Begins a record all of whose cells are empty. */
    public RowReader<T> begin() {
        System.arraycopy(empty, 0, values, 0, empty.length);
        refused = null;
        return this;
    }

    /** Sets the cell of the column with this name; a name of no column is passed over. */
    public RowReader<T> set(String column, String text) {
        Integer place = places.get(column);
        return place == null ? this : set(place, text);
    }

    /** Sets the cell of a column by its place among the kind's columns. */
    public RowReader<T> set(int column, String text) {
        Object value = text.isEmpty() ? empty[column] : known[column].get(text);
        values[column] = value == null && refused == null ? parsed(column, text) : value;
        return this;
    }

    private Object parsed(int place, String text) {
        Column column = kind.columns().get(place);
        try {
            Object value = kind.parse(column, text);
            if (known[place].size() >= REMEMBERED) {
                known[place].clear();
            }
            known[place].put(text, value);
            return value;
        } catch (IllegalArgumentException e) {
            refused = new CellRefused(column.name(), text, e.getMessage());
            return null;
        }
    }

    /** The record of the cells that were set. */
    public T read() throws CellRefused {
        for (int i = 0; i < values.length && refused == null; i++) {
            if (values[i] == null) {
                set(i, "");
            }
        }
        if (refused != null) {
            throw refused;
        }
        return kind.make(values);
    }
}
