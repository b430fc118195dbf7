package pippinry.model;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import pippinry.model.record.Kind;

/** Finds for each change of an edit the row it is about, and what stood there. */
final class Settling {

    private final Program program;
    private final List<Fault> faults = new ArrayList<>();
    private final Map<Kind<?>, TableInEdit<?>> tables = new LinkedHashMap<>();

    Settling(Program program) {
        this.program = program;
    }

    List<Settled<?>> settle(Edit edit) throws EditRefused {
        List<Settled<?>> settled = new ArrayList<>();
        for (int i = 0; i < edit.changes().size(); i++) {
            settled.add(settle(i, edit.changes().get(i)));
        }
        tables.values().forEach(table -> faults.addAll(table.keysHeldTwice()));
        if (!faults.isEmpty()) {
            throw new EditRefused(faults);
        }
        return settled;
    }

    @SuppressWarnings("unchecked")
    private <T extends Record> Settled<T> settle(int number, Change<T> change) {
        TableInEdit<T> table = (TableInEdit<T>)
                tables.computeIfAbsent(change.kind(), any -> new TableInEdit<>(program.table(change.kind())));
        OptionalInt given = change.id();
        int id = given.isPresent()
                ? given.getAsInt()
                : table.placeFor(change.after().orElseThrow());
        Optional<T> before = table.get(id);
        if (given.isPresent() && before.isEmpty()) {
            String name = change.kind().table();
            faults.add(new Fault(number, name, "row " + id, "", "", "there is no such row any more; look again"));
        }
        table.put(number, id, change.after());
        return new Settled<>(change.kind(), id, before, change.after());
    }
}
