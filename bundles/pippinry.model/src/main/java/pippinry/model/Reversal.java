package pippinry.model;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pippinry.model.record.Kind;

/** Turns the changes of an earlier edit round, last first, where every row still stands as that edit left it. */
final class Reversal {

    private record Place(Kind<?> kind, int id) {}

    private final Program program;
    private final List<Fault> faults = new ArrayList<>();
    private final Set<Place> seen = new HashSet<>();

    Reversal(Program program) {
        this.program = program;
    }

    List<Settled<?>> of(List<Settled<?>> done) throws EditRefused {
        List<Settled<?>> reversed = new ArrayList<>(done.size());
        for (int i = done.size() - 1; i >= 0; i--) {
            check(i, done.get(i));
            reversed.add(done.get(i).reversed());
        }
        if (!faults.isEmpty()) {
            throw new EditRefused(faults);
        }
        return reversed;
    }

    /** Only the last change of a row can be compared with what stands there now. */
    private <T extends Record> void check(int number, Settled<T> change) {
        Optional<T> now = program.table(change.kind()).get(change.id());
        if (seen.add(new Place(change.kind(), change.id())) && !now.equals(change.after())) {
            String key = now.or(change::after)
                    .or(change::before)
                    .flatMap(change.kind()::keyOf)
                    .orElse("row " + change.id());
            faults.add(new Fault(number, change.kind().table(), key, "", "", "it was changed again since"));
        }
    }
}
