package pippinry.model.record;

import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * A kind of record and its plain table. The table's columns are the record's components in their order, so the class is
 * the only place that says what a table holds; tables, ledger and archive all read and write through it.
 *
 * @param <T> the record class
 */
public final class Kind<T extends Record> {

    private final String table;
    private final Class<T> type;
    private final List<Column> columns;
    private final List<Column> key;
    private final MethodHandle constructor;

    /**
     * @param lookup that may call the record's constructor
     * @param key how many of the first columns tell one record from another; 0 if two may be alike
     */
    Kind(MethodHandles.Lookup lookup, String table, Class<T> type, int key) {
        this.table = table;
        this.type = type;
        RecordComponent[] components = type.getRecordComponents();
        this.columns = Arrays.stream(components)
                .map(component -> new Column(component, reader(lookup, component)))
                .toList();
        this.key = columns.subList(0, key);
        this.constructor = constructor(lookup, type, components);
    }

    /** The table's name, which is the file's name without its ending. */
    public String table() {
        return table;
    }

    public Class<T> type() {
        return type;
    }

    public List<Column> columns() {
        return columns;
    }

    /** The columns that tell one record from another; empty if two records may be alike. */
    public List<Column> key() {
        return key;
    }

    public Optional<Column> column(String name) {
        return columns.stream().filter(column -> column.name().equals(name)).findFirst();
    }

    /** The text under which the record is filed, key cells joined by a slash; empty for a kind without a key. */
    public Optional<String> keyOf(T row) {
        return key.isEmpty()
                ? Optional.empty()
                : Optional.of(key.stream().map(column -> column.write(row)).collect(Collectors.joining("/")));
    }

    /** The text of a cell. */
    public String cell(T row, Column column) {
        return column.write(row);
    }

    /** Codes of other records that stand in this column of the row. */
    public List<String> cited(T row, Column column) {
        return column.cited(row);
    }

    /**
     * Makes a record from the cells of a row.
     *
     * @param cells gives the text of a column by its name, empty for one that is missing
     */
    public T read(UnaryOperator<String> cells) throws CellRefused {
        List<Object> values = new ArrayList<>(columns.size());
        for (Column column : columns) {
            String text = cells.apply(column.name());
            try {
                values.add(column.parse(text));
            } catch (IllegalArgumentException e) {
                throw new CellRefused(column.name(), text, e.getMessage());
            }
        }
        return make(values.toArray());
    }

    /** The value of a cell. @throws IllegalArgumentException whose message says what was expected */
    public Object parse(Column column, String text) {
        return column.parse(text);
    }

    /** Makes a record of values that {@link #parse} gave, in the order of the columns. */
    public T make(Object[] values) throws CellRefused {
        try {
            return type.cast((Object) constructor.invokeExact(values));
        } catch (Unfit e) {
            throw new CellRefused(e.column(), e.value(), e.getMessage());
        } catch (RuntimeException | Error e) {
            throw e;
        } catch (Throwable e) {
            throw new IllegalStateException(e);
        }
    }

    private static MethodHandle reader(MethodHandles.Lookup lookup, RecordComponent component) {
        try {
            return lookup.unreflect(component.getAccessor()).asType(MethodType.methodType(Object.class, Record.class));
        } catch (IllegalAccessException e) {
            throw new IllegalStateException(e);
        }
    }

    private static <T> MethodHandle constructor(
            MethodHandles.Lookup lookup, Class<T> type, RecordComponent[] components) {
        try {
            Class<?>[] types =
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
            return lookup.unreflectConstructor(type.getDeclaredConstructor(types))
                    .asSpreader(Object[].class, types.length)
                    .asType(MethodType.methodType(Object.class, Object[].class));
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    @Override
    public String toString() {
        return table;
    }
}
