package pippinry.model.record;

import java.lang.invoke.MethodHandle;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pippinry.model.value.Code;
import pippinry.model.value.PollenParent;
import pippinry.model.value.Subject;

/** One column of a plain table. */
public final class Column {

    private static final int RECENT = 1 << 9;
    private static final int SHORT = 40;

    private final String name;
    private final boolean needed;
    private final Cell<?> cell;
    private final Optional<Class<?>> cites;
    private final boolean namesSubject;
    private final boolean text;
    private final MethodHandle read;
    private final Parsed[] recent = new Parsed[RECENT];

    private record Parsed(String text, Object value) {}

    Column(RecordComponent component, MethodHandle read) {
        this.name = nameOf(component);
        this.needed = component.isAnnotationPresent(Needed.class);
        this.cell = Cells.of(component.getGenericType());
        this.cites = cited(component.getGenericType()).filter(cited -> !isOwnCode(component));
        this.namesSubject = Cells.raw(inner(component.getGenericType())) == Subject.class;
        this.text = component.getType() == String.class;
        this.read = read;
    }

    /** As in the header row, such as {@code seed_parent}. */
    public String name() {
        return name;
    }

    /** Whether an empty cell is refused. */
    public boolean needed() {
        return needed;
    }

    /** The record class that the codes in this column name, if it names one. */
    public Optional<Class<?>> cites() {
        return cites;
    }

    /** Whether the column names a record of any kind. */
    public boolean namesSubject() {
        return namesSubject;
    }

    /** Whether the column holds a person's own words, which are kept sign by sign. */
    public boolean isText() {
        return text;
    }

    /** The cell's text; empty for what is not known. */
    String write(Record row) {
        return written(cell, value(row));
    }

    /** Equal cells of many rows share one value: a million scores have a few thousand dates, and one empty text. */
    Object parse(String text) {
        if (needed && text.isEmpty()) {
            throw new IllegalArgumentException("something: this cell may not be empty");
        }
        int hash = text.hashCode();
        int slot = (hash ^ hash >>> 16) & RECENT - 1;
        // Threads may overwrite each other's entries; each entry is whole and immutable, so that does no harm.
        Parsed known = recent[slot];
        if (known != null && known.text().equals(text)) {
            return known.value();
        }
        Object value = cell.read().apply(text);
        if (text.length() <= SHORT) {
            recent[slot] = new Parsed(text, value);
        }
        return value;
    }

    /** The codes of other records that stand in this cell of the row. */
    List<String> cited(Record row) {
        if (cites.isEmpty() && !namesSubject) {
            return List.of();
        }
        Object value = value(row);
        Object some = value instanceof Optional<?> optional ? optional.orElse(null) : value;
        if (some instanceof PollenParent<?> parent) {
            return parent.candidates().stream().map(Code::text).toList();
        }
        return some == null ? List.of() : List.of(some.toString());
    }

    private Object value(Record row) {
        try {
            return (Object) read.invokeExact(row);
        } catch (RuntimeException | Error e) {
            throw e;
        } catch (Throwable e) {
            throw new IllegalStateException(e);
        }
    }

    @SuppressWarnings("unchecked")
    private static <V> String written(Cell<V> cell, Object value) {
        return cell.write().apply((V) value);
    }

    private static String nameOf(RecordComponent component) {
        Named named = component.getAnnotation(Named.class);
        return named != null
                ? named.value()
                : component.getName().replaceAll("([A-Z])", "_$1").toLowerCase(Locale.ROOT);
    }

    private static Optional<Class<?>> cited(Type type) {
        Type inner = inner(type);
        boolean code = Cells.raw(inner) == Code.class || Cells.raw(inner) == PollenParent.class;
        return code
                ? Optional.of(Cells.raw(((ParameterizedType) inner).getActualTypeArguments()[0]))
                : Optional.empty();
    }

    /** A record's own code names nobody else; {@code sport_of} and the like are optional. */
    private static boolean isOwnCode(RecordComponent component) {
        return component.getType() == Code.class
                && cited(component.getGenericType())
                        .filter(component.getDeclaringRecord()::equals)
                        .isPresent();
    }

    private static Type inner(Type type) {
        return Cells.raw(type) == Optional.class ? ((ParameterizedType) type).getActualTypeArguments()[0] : type;
    }

    @Override
    public String toString() {
        return name;
    }
}
