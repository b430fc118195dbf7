package pippinry.exchange.internal.archive;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import pippinry.exchange.internal.tables.FileRefused;
import pippinry.exchange.internal.tables.Refusal;
import pippinry.model.Change;
import pippinry.model.Edit;
import pippinry.model.EditRefused;
import pippinry.model.Program;
import pippinry.model.ProgramFolders;
import pippinry.model.ProgramStore;
import pippinry.model.Row;
import pippinry.model.Settled;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;

/**
 * Brings a program back from its archive: every edit is made again, by the same hand at the same time, and what comes out must
 * be the records that the archive holds.
 */
public final class Restoring implements ArchiveReader.Taker, AutoCloseable {

    private static final String WITHOUT =
            "; its records alone come in if you make a program with 'new' and import the archive into that";

    private final Path archive;
    private final HandsOfTheTime clock;
    private final ProgramStore store;
    private final Map<Kind<?>, List<Row<?>>> standing = new HashMap<>();
    private final List<Settled<?>> changes = new ArrayList<>();
    private Optional<ArchiveLine.Edited> edit = Optional.empty();
    private long line;

    /** @param folder where the program is made, empty or not there yet */
    public Restoring(Path archive, ProgramFolders folders, Path folder, ZoneId zone) {
        this.archive = archive;
        this.clock = new HandsOfTheTime(zone);
        this.store = folders.create(folder, clock);
    }

    /** Shows the time of the edit that is made again. */
    private static final class HandsOfTheTime extends Clock {

        private final ZoneId zone;
        private Instant now = Instant.EPOCH;

        HandsOfTheTime(ZoneId zone) {
            this.zone = zone;
        }

        @Override
        public ZoneId getZone() {
            return zone;
        }

        @Override
        public Clock withZone(ZoneId other) {
            throw new UnsupportedOperationException();
        }

        @Override
        public Instant instant() {
            return now;
        }
    }

    @Override
    public void head(ArchiveHead head) {
        // The reader has made sure that the history is as long as the head says.
    }

    @Override
    public void line(long number, ArchiveLine read) throws FileRefused {
        if (read instanceof ArchiveLine.Standing<?> record) {
            standing.computeIfAbsent(record.kind(), any -> new ArrayList<>()).add(record.row());
        } else if (read instanceof ArchiveLine.Changed changed) {
            changes.add(changed.change());
        } else if (read instanceof ArchiveLine.Edited next) {
            makeAgain();
            edit = Optional.of(next);
            line = number;
        }
    }

    /** Makes the last edit and compares the records; returns the program that came out. */
    public Program finish() throws FileRefused {
        makeAgain();
        edit = Optional.empty();
        for (Kind<?> kind : Kinds.ALL) {
            if (!store.now().table(kind).rows().equals(standing.getOrDefault(kind, List.of()))) {
                throw refused("its history does not lead to its records in " + kind.table() + WITHOUT);
            }
        }
        return store.now();
    }

    private void makeAgain() throws FileRefused {
        if (edit.isEmpty()) {
            return;
        }
        ArchiveLine.Edited again = edit.get();
        clock.now = again.time();
        try {
            if (again.takesBack().isPresent()) {
                store.takeBack(again.takesBack().getAsLong(), again.author());
            } else {
                store.apply(new Edit(again.author(), again.reason(), wanted()));
            }
        } catch (EditRefused | IllegalArgumentException e) {
            throw refused("edit " + again.number() + " cannot be made again (" + e.getMessage() + ")" + WITHOUT);
        }
        if (!store.changesOf(again.number()).equals(changes)) {
            throw refused("edit " + again.number() + " does not come out as the archive tells" + WITHOUT);
        }
        changes.clear();
    }

    private List<Change<?>> wanted() {
        return changes.stream().<Change<?>>map(Restoring::wanted).toList();
    }

    /** A new row finds its place again by itself. */
    private static <T extends Record> Change<T> wanted(Settled<T> change) {
        boolean isNew = change.before().isEmpty();
        return new Change<>(change.kind(), isNew ? OptionalInt.empty() : OptionalInt.of(change.id()), change.after());
    }

    private FileRefused refused(String reason) {
        return new FileRefused(Refusal.ofRow(archive, line, reason));
    }

    @Override
    public void close() {
        store.close();
    }
}
