package pippinry.model;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import pippinry.model.record.Kind;
import pippinry.model.value.Code;

/**
 * All records of one kind as they stand in one program. Immutable; a changed copy shares all that did not change, so
 * its cost does not depend on how many records there are.
 */
public interface Table<T extends Record> {

    Kind<T> kind();

    int size();

    Optional<T> get(int id);

    /** The row filed under this key; always empty for a kind without a key. */
    Optional<Row<T>> find(String key);

    /** Every row in the order of entry. */
    void forEach(Consumer<? super Row<T>> action);

    /** The rows in which this code stands in any column that names another record, in the order of entry. */
    List<Row<T>> citing(String code);

    /** The id that the next new row gets. */
    int nextId();

    /**
     * A copy with these rows put in and those taken out, as one step.
     *
     * @param nextId above every id that was given out up to then, though its row be gone again
     */
    Table<T> with(List<Row<T>> put, List<Integer> removed, int nextId);

    default Optional<T> find(Code<T> code) {
        return find(code.text()).map(Row::value);
    }

    /** Every record in the order of entry. */
    default Stream<T> stream() {
        return rows().stream().map(Row::value);
    }

    /** Every row in the order of entry, as a list of its own. */
    default List<Row<T>> rows() {
        List<Row<T>> rows = new java.util.ArrayList<>(size());
        forEach(rows::add);
        return rows;
    }
}
