package pippinry.exchange.internal;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
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

    private Path folder;
    private final Clock clock;
    private final List<Program> programs = new ArrayList<>(List.of(Program.empty()));
    private final List<HistoryLine> lines = new ArrayList<>();
    private final List<List<Settled<?>>> changes = new ArrayList<>();

    public MemoryStore(Path folder, Clock clock) {
        this.folder = folder;
        this.clock = clock;
    }

    /** Programs by a mark in their folder, which goes with it when the folder gets another name. */
    public static final class Folders implements ProgramFolders {

        private final List<MemoryStore> stores = new ArrayList<>();

        private static Path mark(Path folder) {
            return folder.resolve("program");
        }

        @Override
        public boolean isProgram(Path folder) {
            return Files.exists(mark(folder));
        }

        @Override
        public ProgramStore create(Path folder, Clock clock) {
            if (isProgram(folder)) {
                throw new StoreFailed(folder + " holds a program already");
            }
            try {
                Files.createDirectories(folder);
                Files.writeString(mark(folder), Integer.toString(stores.size()));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            stores.add(new MemoryStore(folder, clock));
            return open(folder, clock);
        }

        @Override
        public ProgramStore open(Path folder, Clock clock) {
            if (!isProgram(folder)) {
                throw new StoreFailed(folder + " holds no program");
            }
            try {
                MemoryStore store = stores.get(Integer.parseInt(Files.readString(mark(folder))));
                store.folder = folder;
                return store;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
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
    public HistoryLine takeBack(long edit, String author) throws EditRefused {
        Outcome outcome = now().takeBack(changesOf(edit), clock.instant());
        String reason = "taken back: " + lines.get((int) edit - 1).reason();
        return keep(outcome.program(), outcome.changes(), author, reason, OptionalLong.of(edit));
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
