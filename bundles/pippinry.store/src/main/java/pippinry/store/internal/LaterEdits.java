package pippinry.store.internal;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pippinry.model.EditRefused;
import pippinry.model.Fault;
import pippinry.model.HistoryLine;
import pippinry.model.Program;
import pippinry.model.Settled;
import pippinry.model.record.Kind;
import pippinry.store.internal.ledger.EditReader;
import pippinry.store.internal.ledger.Edits;

/** Names the edits that stand in the way of taking back an earlier one: those that changed the same records since. */
final class LaterEdits {

    private record Place(Kind<?> kind, int id) {}

    private final Edits edits;
    private final History history;
    private final Program now;

    LaterEdits(Edits edits, History history, Program now) {
        this.edits = edits;
        this.history = history;
        this.now = now;
    }

    /** @throws EditRefused if a record does not stand as the edit left it */
    void check(long edit, List<Settled<?>> changes) throws EditRefused {
        Map<Place, Settled<?>> last = new LinkedHashMap<>();
        changes.forEach(change -> last.put(new Place(change.kind(), change.id()), change));
        last.values().removeIf(this::standsAsLeft);
        if (!last.isEmpty()) {
            throw new EditRefused(faults(edit, last));
        }
    }

    private <T extends Record> boolean standsAsLeft(Settled<T> change) {
        return now.table(change.kind()).get(change.id()).equals(change.after());
    }

    private List<Fault> faults(long edit, Map<Place, Settled<?>> changed) {
        List<Fault> faults = new ArrayList<>();
        Set<Place> open = new HashSet<>(changed.keySet());
        EditReader reader = new EditReader(edits.folder());
        for (long later = edits.last(); later > edit && !open.isEmpty(); later--) {
            for (Settled<?> change : reader.changes(edits.edit(later))) {
                Place place = new Place(change.kind(), change.id());
                if (open.remove(place)) {
                    faults.add(fault(changed.get(place), history.line(later)));
                }
            }
        }
        return faults;
    }

    private static <T extends Record> Fault fault(Settled<T> change, HistoryLine later) {
        Optional<T> row = change.after().or(change::before);
        String key = row.flatMap(change.kind()::keyOf).orElse("row " + change.id());
        String reason = "edit " + later.number() + " (" + later.author() + ": " + later.reason()
                + ") changed it since; take that back first";
        return new Fault(-1, change.kind().table(), key, "", "", reason);
    }
}
