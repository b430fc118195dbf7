package pippinry.exchange.internal;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import pippinry.model.Edit;
import pippinry.model.EditRefused;
import pippinry.model.HistoryLine;
import pippinry.model.Outcome;
import pippinry.model.Program;
import pippinry.model.ProgramFolders;
import pippinry.model.ProgramStore;
import pippinry.model.Settled;
import pippinry.model.StoreFailed;

/** Keeps a program in memory, so that exchange is tested without a disk. */
public final class MemoryStore implements ProgramStore {

    private final Path folder;
    private final Clock clock;
    private final List<Program> programs = new ArrayList<>(List.of(Program.empty()));
    private final List<HistoryLine> lines = new ArrayList<>();
    private final List<List<Settled<?>>> changes = new ArrayList<>();

    public MemoryStore(Path folder, Clock clock) {
        this.folder = folder;
        this.clock = clock;
    }

    /** Programs by their folder's path. */
    public static final class Folders implements ProgramFolders {

        private final Map<Path, MemoryStore> stores = new HashMap<>();

        @Override
        public boolean isProgram(Path folder) {
            return stores.containsKey(folder);
        }

        @Override
        public ProgramStore create(Path folder, Clock clock) {
            if (isProgram(folder)) {
                throw new StoreFailed(folder + " holds a program already");
            }
            stores.put(folder, new MemoryStore(folder, clock));
            return open(folder, clock);
        }

        @Override
        public ProgramStore open(Path folder, Clock clock) {
            return Optional.ofNullable(stores.get(folder))
                    .orElseThrow(() -> new StoreFailed(folder + " holds no program"));
        }

        @Override
        public ProgramStore openToRead(Path folder, Clock clock) {
            return open(folder, clock);
        }
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
        return programs.get(programs.size() - 1);
    }

    @Override
    public Program asOf(LocalDate day) {
        return programs.stream()
                .filter(program ->
                        !program.time().atZone(ZoneOffset.UTC).toLocalDate().isAfter(day))
                .reduce((one, later) -> later)
                .orElseThrow();
    }

    @Override
    public HistoryLine apply(Edit edit) throws EditRefused {
        Outcome outcome = now().apply(edit, clock.instant());
        return keep(outcome.program(), outcome.changes(), edit.author(), edit.reason(), OptionalLong.empty());
    }

    private HistoryLine keep(
            Program program, List<Settled<?>> settled, String author, String reason, OptionalLong takesBack) {
        HistoryLine line = new HistoryLine(
                program.edit(), program.time(), author, reason, settled.size(), takesBack, OptionalLong.empty());
        programs.add(program);
        lines.add(line);
        changes.add(settled);
        return line;
    }

    @Override
    public List<HistoryLine> history() {
        return List.copyOf(lines);
    }

    @Override
    public List<Settled<?>> changesOf(long edit) {
        return changes.get((int) edit - 1);
    }

    @Override
    public Optional<HistoryLine> undoable() {
        throw new UnsupportedOperationException();
    }

    @Override
    public Optional<HistoryLine> redoable() {
        throw new UnsupportedOperationException();
    }

    @Override
    public HistoryLine takeBack(long edit, String author) {
        List<Settled<?>> back = new ArrayList<>();
        changesOf(edit).forEach(change -> back.add(0, change.reversed()));
        Program program = now().with(back, now().edit() + 1, clock.instant());
        return keep(program, back, author, "takes back edit " + edit, OptionalLong.of(edit));
    }

    @Override
    public HistoryLine undo(String author) {
        throw new UnsupportedOperationException();
    }

    @Override
    public HistoryLine redo(String author) {
        throw new UnsupportedOperationException();
    }

    @Override
    public List<String> notices() {
        return List.of();
    }

    @Override
    public void close() {}
}
