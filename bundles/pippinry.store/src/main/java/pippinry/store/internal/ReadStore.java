package pippinry.store.internal;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import pippinry.model.Edit;
import pippinry.model.HistoryLine;
import pippinry.model.Program;
import pippinry.model.ProgramStore;
import pippinry.model.Settled;
import pippinry.model.StoreFailed;
import pippinry.store.internal.ledger.Edits;

/** A program open to be read only, as it stood when it was opened. */
final class ReadStore implements ProgramStore {

    private final Path folder;
    private final Clock clock;
    private final Edits edits;
    private final History history;
    private final Past past;
    private final Program now;
    private final List<String> notices;

    /** @param from a snapshot of this program, from which the ledger is followed to its end */
    ReadStore(Path folder, Clock clock, Edits edits, Program from, List<String> notices) {
        this.folder = folder;
        this.clock = clock;
        this.edits = edits;
        this.history = new History(edits);
        this.past = new Past(edits, history);
        this.now = new Replay(edits, from).to(edits.last());
        this.notices = List.copyOf(notices);
    }

    @Override
    public Path folder() {
        return folder;
    }

    @Override
    public boolean readOnly() {
        return true;
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
    public HistoryLine apply(Edit edit) {
        throw refused();
    }

    @Override
    public HistoryLine takeBack(long edit, String author) {
        throw refused();
    }

    @Override
    public HistoryLine undo(String author) {
        throw refused();
    }

    @Override
    public HistoryLine redo(String author) {
        throw refused();
    }

    private StoreFailed refused() {
        return new StoreFailed(
                "The program in " + folder + " is open here to read only. Open it to write, then try again.");
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
        return Optional.empty();
    }

    @Override
    public Optional<HistoryLine> redoable() {
        return Optional.empty();
    }

    @Override
    public List<String> notices() {
        return notices;
    }

    @Override
    public void close() {}
}
