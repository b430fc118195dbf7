package pippinry.model;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pippinry.model.record.Kind;

/** Makes tables and their next versions. */
final class Tables {

    private Tables() {}

    static <T extends Record> Table<T> empty(Kind<T> kind) {
        return RecordTable.empty(kind);
    }

    static <T extends Record> Table<T> of(Kind<T> kind, List<Row<T>> rows, int nextId) {
        return RecordTable.of(kind, rows, nextId);
    }

    /** The last change of a row counts. */
    @SuppressWarnings("unchecked")
    static <T extends Record> Table<T> with(Table<T> table, List<Settled<?>> changes) {
        Map<Integer, Optional<T>> last = new LinkedHashMap<>();
        changes.forEach(change -> last.put(change.id(), (Optional<T>) change.after()));
        List<Row<T>> put = last.entrySet().stream()
                .filter(row -> row.getValue().isPresent())
                .map(row -> new Row<>(row.getKey(), row.getValue().get()))
                .toList();
        List<Integer> removed = last.entrySet().stream()
                .filter(row ->
                        row.getValue().isEmpty() && table.get(row.getKey()).isPresent())
                .map(Map.Entry::getKey)
                .toList();
        return table.with(put, removed);
    }
}
