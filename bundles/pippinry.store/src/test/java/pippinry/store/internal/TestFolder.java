package pippinry.store.internal;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import pippinry.model.ProgramStore;
import pippinry.store.internal.ledger.LazyDisk;

/** A program folder for tests, with a clock that the test moves; nothing is forced to disk. */
final class TestFolder extends Clock {

    final Path path;
    Announcement announced = (edit, changes) -> {};
    private Instant now = Instant.parse("2026-03-27T10:00:00Z");

    TestFolder(Path path) {
        this.path = path;
    }

    ProgramStore create() {
        return opening().create();
    }

    ProgramStore open() {
        return opening().open();
    }

    ProgramStore openToRead() {
        return opening().openToRead();
    }

    private FolderOpening opening() {
        return new FolderOpening(path, this, new LazyDisk(), announced);
    }

    void pass(Duration time) {
        now = now.plus(time);
    }

    @Override
    public Instant instant() {
        return now;
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        throw new UnsupportedOperationException();
    }
}
