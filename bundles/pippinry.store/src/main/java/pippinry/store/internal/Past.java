package pippinry.store.internal;

import java.lang.ref.SoftReference;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.Objects;
import java.util.stream.Stream;
import pippinry.model.Program;
import pippinry.store.internal.ledger.Edits;

/**
 * Shows the program as it stood on a day, going along the ledger from now, from the first edit or from the day that was
 * asked for last, whichever is nearest. Safe for any thread.
 */
final class Past {

    private final Edits edits;
    private final History history;
    /** Given up when memory is short. */
    private volatile SoftReference<Program> last = new SoftReference<>(null);

    Past(Edits edits, History history) {
        this.edits = edits;
        this.history = history;
    }

    Program asOf(LocalDate day, ZoneId zone, Program now) {
        Instant nextMidnight = day.plusDays(1).atStartOfDay(zone).toInstant();
        long edit = Math.min(history.lastNotAfter(nextMidnight.minusNanos(1)), now.edit());
        Program nearest = Stream.of(now, Program.empty(), last.get())
                .filter(Objects::nonNull)
                .min(Comparator.comparingLong(program -> distance(program, edit)))
                .orElseThrow();
        Program then = new Replay(edits, nearest).to(edit);
        last = new SoftReference<>(then);
        return then;
    }

    /** In records that were put in or taken out between. */
    private long distance(Program program, long edit) {
        return history.records(Math.min(program.edit(), edit) + 1, Math.max(program.edit(), edit));
    }
}
