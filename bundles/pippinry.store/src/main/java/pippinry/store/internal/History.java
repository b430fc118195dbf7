package pippinry.store.internal;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import pippinry.model.HistoryLine;
import pippinry.model.Settled;
import pippinry.store.internal.ledger.EditHead;
import pippinry.store.internal.ledger.EditReader;
import pippinry.store.internal.ledger.Edits;
import pippinry.store.internal.ledger.Entry;

/**
 * What the ledger tells of the past. An edit stands unless an edit that stands takes it back; so an undo that was itself
 * taken back counts no more.
 */
final class History {

    private static final int AT_ONCE = 1_000;

    private final Edits edits;

    History(Edits edits) {
        this.edits = edits;
    }

    List<HistoryLine> lines() {
        List<Entry> all = edits.edits(1, edits.last());
        Map<Long, Long> takenBackBy = new HashMap<>();
        for (int i = all.size() - 1; i >= 0; i--) {
            note(all.get(i).head(), takenBackBy);
        }
        return all.stream()
                .map(entry -> line(entry.head(), takenBackBy.get(entry.head().number())))
                .toList();
    }

    HistoryLine line(long number) {
        return line(edits.edit(number).head(), takenBackBy(number));
    }

    /** Which edit takes this one back and stands; null if none. */
    Long takenBackBy(long number) {
        return backTo(number).get(number);
    }

    private Map<Long, Long> backTo(long number) {
        Map<Long, Long> takenBackBy = new HashMap<>();
        for (long later = edits.last(); later > number; later--) {
            note(edits.edit(later).head(), takenBackBy);
        }
        return takenBackBy;
    }

    /** Called from the last edit backwards, so that it is known of each whether it stands. */
    private static void note(EditHead head, Map<Long, Long> takenBackBy) {
        if (head.takesBack().isPresent() && !takenBackBy.containsKey(head.number())) {
            takenBackBy.put(head.takesBack().getAsLong(), head.number());
        }
    }

    private static HistoryLine line(EditHead head, Long takenBackBy) {
        return new HistoryLine(
                head.number(),
                head.time(),
                head.author(),
                head.reason(),
                head.records(),
                head.takesBack(),
                takenBackBy == null ? OptionalLong.empty() : OptionalLong.of(takenBackBy));
    }

    List<Settled<?>> changesOf(long number) {
        return new EditReader(edits.folder()).changes(edits.edit(number));
    }

    /** The last edit that takes none back, changed anything and stands. */
    Optional<HistoryLine> undoable() {
        Map<Long, Long> takenBackBy = new HashMap<>();
        for (long number = edits.last(); number > 0; number--) {
            EditHead head = edits.edit(number).head();
            if (head.takesBack().isEmpty() && head.records() > 0 && !takenBackBy.containsKey(number)) {
                return Optional.of(line(head, null));
            }
            note(head, takenBackBy);
        }
        return Optional.empty();
    }

    /** The number of the last undo that stands, if no edit of another sort came after it. */
    OptionalLong lastUndo() {
        Map<Long, Long> takenBackBy = new HashMap<>();
        for (long number = edits.last(); number > 0; number--) {
            EditHead head = edits.edit(number).head();
            if (head.takesBack().isEmpty()) {
                return OptionalLong.empty();
            }
            if (!takenBackBy.containsKey(number) && isUndo(head)) {
                return OptionalLong.of(number);
            }
            note(head, takenBackBy);
        }
        return OptionalLong.empty();
    }

    /** An undo takes back an edit proper; what takes back an undo brings again. */
    private boolean isUndo(EditHead head) {
        boolean undo = false;
        for (OptionalLong at = head.takesBack(); at.isPresent(); ) {
            undo = !undo;
            at = edits.edit(at.getAsLong()).head().takesBack();
        }
        return undo;
    }

    /** The edit that the undo with this number, through whatever chain, is about. */
    HistoryLine origin(long number) {
        EditHead head = edits.edit(number).head();
        while (head.takesBack().isPresent()) {
            head = edits.edit(head.takesBack().getAsLong()).head();
        }
        return line(head.number());
    }

    /** Number of the last edit that is not after this moment; 0 if all are. */
    long lastNotAfter(Instant moment) {
        long low = 0;
        long high = edits.last();
        while (low < high) {
            long middle = (low + high + 1) / 2;
            if (edits.edit(middle).head().time().isAfter(moment)) {
                high = middle - 1;
            } else {
                low = middle;
            }
        }
        return low;
    }

    /** How many records these edits put in or took out. */
    long records(long from, long to) {
        long records = 0;
        for (long start = from; start <= to; start += AT_ONCE) {
            records += edits.edits(start, Math.min(to, start + AT_ONCE - 1)).stream()
                    .mapToLong(entry -> entry.head().records())
                    .sum();
        }
        return records;
    }
}
