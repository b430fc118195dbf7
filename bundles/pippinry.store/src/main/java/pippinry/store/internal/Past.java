package pippinry.store.internal;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import pippinry.model.Program;
import pippinry.store.internal.ledger.Edits;

/** Shows the program as it stood on a day, going back from now or forward from the first edit, whichever is less. */
final class Past {

    private final Edits edits;
    private final History history;

    Past(Edits edits, History history) {
        this.edits = edits;
        this.history = history;
    }

    Program asOf(LocalDate day, ZoneId zone, Program now) {
        Instant nextMidnight = day.plusDays(1).atStartOfDay(zone).toInstant();
        long edit = Math.min(history.lastNotAfter(nextMidnight.minusNanos(1)), now.edit());
        long back = history.records(edit + 1, now.edit());
        long forward = history.records(1, edit);
        return new Replay(edits, back <= forward ? now : Program.empty()).to(edit);
    }
}
