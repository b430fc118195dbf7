package pippinry.model;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pippinry.model.record.Kind;

/** Finds for each change of an edit the row it is about, and what stood there. */
final class Settling {

    private final Program program;
    private final List<Fault> faults = new ArrayList<>();
    private final Map<Kind<?>, Integer> nextIds = new HashMap<>();
    private final Map<Kind<?>, Map<String, Integer>> newKeys = new HashMap<>();
    private final Map<Kind<?>, Map<Integer, Optional<?>>> touched = new HashMap<>();

    Settling(Program program) {
        this.program = program;
    }

    List<Settled<?>> settle(Edit edit) throws EditRefused {
        List<Settled<?>> settled = new ArrayList<>();
        for (int i = 0; i < edit.changes().size(); i++) {
            settled.add(settle(i, edit.changes().get(i)));
        }
        if (!faults.isEmpty()) {
            throw new EditRefused(faults);
        }
        return settled;
    }

    private <T extends Record> Settled<T> settle(int number, Change<T> change) {
        Table<T> table = program.table(change.kind());
        int id = change.id().isPresent()
                ? change.id().getAsInt()
                : place(table, change.after().orElseThrow());
        Optional<T> before = before(table, id);
        if (change.id().isPresent() && before.isEmpty()) {
            faults.add(new Fault(
                    number, table.kind().table(), "row " + id, "", "", "there is no such row any more; look again"));
        }
        touched.computeIfAbsent(change.kind(), any -> new HashMap<>()).put(id, change.after());
        return new Settled<>(change.kind(), id, before, change.after());
    }

    private <T extends Record> int place(Table<T> table, T value) {
        Optional<String> key = table.kind().keyOf(value);
        if (key.isEmpty()) {
            return next(table);
        }
        return table.find(key.get()).map(Row::id).orElseGet(() -> newKeys.computeIfAbsent(
                        table.kind(), any -> new HashMap<>())
                .computeIfAbsent(key.get(), any -> next(table)));
    }

    private int next(Table<?> table) {
        return nextIds.merge(table.kind(), table.nextId(), (known, any) -> known + 1);
    }

    @SuppressWarnings("unchecked")
    private <T extends Record> Optional<T> before(Table<T> table, int id) {
        Map<Integer, Optional<?>> earlier = touched.getOrDefault(table.kind(), Map.of());
        return earlier.containsKey(id) ? (Optional<T>) earlier.get(id) : table.get(id);
    }
}
