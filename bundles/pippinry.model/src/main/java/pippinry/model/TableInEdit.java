package pippinry.model;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pippinry.model.record.Kind;

/** A table in the midst of an edit: as it was before, but for the rows that the edit has touched so far. */
final class TableInEdit<T extends Record> {

    private record Touched<T>(int change, Optional<T> now) {}

    private final Table<T> before;
    private final Map<Integer, Touched<T>> touched = new LinkedHashMap<>();
    private final Map<String, Integer> lastWithKey = new HashMap<>();
    private int nextId;

    TableInEdit(Table<T> before) {
        this.before = before;
        this.nextId = before.nextId();
    }

    Optional<T> get(int id) {
        Touched<T> row = touched.get(id);
        return row == null ? before.get(id) : row.now();
    }

    void put(int change, int id, Optional<T> now) {
        touched.put(id, new Touched<>(change, now));
        now.flatMap(kind()::keyOf).ifPresent(key -> lastWithKey.put(key, id));
    }

    /** The row that has the value's key at this point of the edit, else a new one. */
    int placeFor(T value) {
        return kind().keyOf(value).flatMap(this::holder).orElseGet(() -> nextId++);
    }

    private Optional<Integer> holder(String key) {
        return Optional.ofNullable(lastWithKey.get(key))
                .filter(id -> has(id, key))
                .or(() -> before.find(key).map(Row::id).filter(id -> has(id, key)));
    }

    private boolean has(int id, String key) {
        return get(id).flatMap(kind()::keyOf).filter(key::equals).isPresent();
    }

    /** Rows that the edit, when all of it is done, leaves with the key of another. */
    List<Fault> keysHeldTwice() {
        List<Fault> faults = new ArrayList<>();
        touched.forEach((id, row) -> row.now()
                .flatMap(kind()::keyOf)
                .filter(key -> isHeldByAnother(id, key))
                .ifPresent(key -> faults.add(new Fault(
                        row.change(),
                        kind().table(),
                        key,
                        kind().key().get(0).name(),
                        key,
                        "this is on file already"))));
        return faults;
    }

    private boolean isHeldByAnother(int id, String key) {
        int last = lastWithKey.get(key);
        boolean inEdit = last != id && has(last, key);
        return inEdit
                || before.find(key)
                        .map(Row::id)
                        .filter(other -> other != id && has(other, key))
                        .isPresent();
    }

    private Kind<T> kind() {
        return before.kind();
    }
}
