package pippinry.model;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pippinry.model.page.Page;
import pippinry.model.page.Words;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;

/** Makes tables and their next versions. */
final class Tables {

    /** Kinds that come by the million. */
    private static final Set<Kind<?>> PACKED = Set.of(Kinds.SCORES, Kinds.WEATHER);

    private Tables() {}

    static <T extends Record> Table<T> empty(Kind<T> kind) {
        return PACKED.contains(kind) ? ColumnTable.empty(kind) : RecordTable.empty(kind);
    }

    static <T extends Record> Table<T> of(Kind<T> kind, List<Row<T>> rows, int nextId) {
        if (PACKED.contains(kind)) {
            throw new IllegalArgumentException(kind + " is kept in pages");
        }
        return RecordTable.of(kind, rows, nextId);
    }

    static <T extends Record> Table<T> of(Kind<T> kind, Words words, List<Page> pages, int nextId) {
        if (!PACKED.contains(kind)) {
            throw new IllegalArgumentException(kind + " is not kept in pages");
        }
        return ColumnTable.of(kind, words, pages, nextId);
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
        int nextId = changes.stream().mapToInt(Settled::id).max().orElse(-1) + 1;
        return table.with(put, removed, Math.max(nextId, table.nextId()));
    }
}
