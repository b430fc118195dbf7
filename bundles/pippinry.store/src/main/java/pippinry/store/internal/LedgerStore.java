package pippinry.store.internal;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import pippinry.model.Edit;
import pippinry.model.EditRefused;
import pippinry.model.Fault;
import pippinry.model.HistoryLine;
import pippinry.model.Outcome;
import pippinry.model.Program;
import pippinry.model.ProgramStore;
import pippinry.model.Settled;
import pippinry.model.StoreFailed;
import pippinry.store.internal.ledger.EditHead;
import pippinry.store.internal.ledger.Entry;
import pippinry.store.internal.ledger.Ledger;
import pippinry.store.internal.ledger.NotWritable;

/** A program open to be changed: each edit is checked, written to the ledger, and only then seen by anybody. */
final class LedgerStore implements ProgramStore {

    private final Path folder;
    private final Clock clock;
    private final Ledger ledger;
    private final History history;
    private final Past past;
    private final Background background;
    private final Announcement announcement;
    private final FolderLock lock;
    private volatile Program now;
    private boolean closed;

    LedgerStore(
            Path folder,
            Clock clock,
            Ledger ledger,
            Program now,
            Background background,
            Announcement announcement,
            FolderLock lock) {
        this.folder = folder;
        this.clock = clock;
        this.ledger = ledger;
        this.history = new History(ledger);
        this.past = new Past(ledger, history);
        this.background = background;
        this.announcement = announcement;
        this.lock = lock;
        this.now = now;
    }

    @Override
    public Path folder() {
        return folder;
    }

    @Override
    public boolean readOnly() {
        return false;
    }

    @Override
    public Program now() {
        return now;
    }

    @Override
    public Program asOf(LocalDate day) {
        return past.asOf(day, clock.getZone(), now);
    }

    @Override
    public synchronized HistoryLine apply(Edit edit) throws EditRefused {
        Instant time = time();
        return write(edit.author(), edit.reason(), OptionalLong.empty(), now.apply(edit, time));
    }

    @Override
    public synchronized HistoryLine takeBack(long edit, String author) throws EditRefused {
        if (edit < 1 || edit > ledger.last()) {
            throw refused("there is no edit " + edit + "; the last is " + ledger.last());
        }
        Long by = history.takenBackBy(edit);
        if (by != null) {
            throw refused("edit " + edit + " was taken back already, by edit " + by);
        }
        return takeBack(edit, author, "taken back: ");
    }

    @Override
    public synchronized HistoryLine undo(String author) throws EditRefused {
        HistoryLine last = history.undoable().orElseThrow(() -> refused("there is no edit to take back"));
        return takeBack(last.number(), author, "taken back: ");
    }

    @Override
    public synchronized HistoryLine redo(String author) throws EditRefused {
        OptionalLong undo = history.lastUndo();
        if (undo.isEmpty()) {
            throw refused("nothing was taken back last that could be brought again");
        }
        return takeBack(undo.getAsLong(), author, "brought again: ");
    }

    private HistoryLine takeBack(long edit, String author, String what) throws EditRefused {
        List<Settled<?>> changes = history.changesOf(edit);
        new LaterEdits(ledger, history, now).check(edit, changes);
        Outcome outcome = now.takeBack(changes, time());
        String reason = what + history.origin(edit).reason();
        return write(author, reason, OptionalLong.of(edit), outcome);
    }

    private HistoryLine write(String author, String reason, OptionalLong takesBack, Outcome outcome)
            throws EditRefused {
        if (closed) {
            throw new StoreFailed("The program in " + folder + " is closed. Open it again.");
        }
        if (author.isBlank()) {
            throw new IllegalArgumentException("An edit has an author");
        }
        Program next = outcome.program();
        List<Settled<?>> changes = outcome.changes().stream()
                .filter(change -> !change.before().equals(change.after()))
                .toList();
        EditHead head = new EditHead(next.edit(), next.time(), author, reason, changes.size(), takesBack);
        Entry entry = append(head, changes);
        boolean newDay = !day(next.time()).equals(day(now.time()));
        now = next;
        background.changed(next, entry.sum(), changes);
        if (newDay) {
            background.backUp(ledger.end());
        }
        return announced(history.line(head.number()), changes);
    }

    private Entry append(EditHead head, List<Settled<?>> changes) throws EditRefused {
        try {
            return ledger.append(head, changes);
        } catch (NotWritable e) {
            throw new EditRefused(
                    List.of(new Fault(-1, e.table(), e.key(), e.column(), e.text(), "this holds " + e.getMessage())));
        }
    }

    /** The edit is on disk: whoever is told of it cannot make it fail any more. */
    private HistoryLine announced(HistoryLine line, List<Settled<?>> changes) {
        try {
            announcement.changed(line, changes);
        } catch (RuntimeException e) {
            background.notice("Edit " + line.number() + " is on file, but what shows it was not told: " + e.getMessage()
                    + ". Open the program again to see it everywhere.");
        }
        return line;
    }

    private LocalDate day(Instant time) {
        return time.atZone(clock.getZone()).toLocalDate();
    }

    /** Never before the last edit, even when somebody set the clock back. */
    private Instant time() {
        Instant time = clock.instant().truncatedTo(ChronoUnit.MILLIS);
        return time.isBefore(now.time()) ? now.time() : time;
    }

    private static EditRefused refused(String reason) {
        return new EditRefused(List.of(new Fault(-1, "history", "", "", "", reason)));
    }

    @Override
    public List<HistoryLine> history() {
        return history.lines();
    }

    @Override
    public List<Settled<?>> changesOf(long edit) {
        return history.changesOf(edit);
    }

    @Override
    public Optional<HistoryLine> undoable() {
        return history.undoable();
    }

    @Override
    public Optional<HistoryLine> redoable() {
        OptionalLong undo = history.lastUndo();
        return undo.isPresent() ? Optional.of(history.origin(undo.getAsLong())) : Optional.empty();
    }

    @Override
    public List<String> notices() {
        return background.notices();
    }

    synchronized boolean isClosed() {
        return closed;
    }

    @Override
    public synchronized void close() {
        if (closed) {
            return;
        }
        closed = true;
        try (lock;
                ledger;
                background) {
            background.backUp(ledger.end());
        }
    }
}
