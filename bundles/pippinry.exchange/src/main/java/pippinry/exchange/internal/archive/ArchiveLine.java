package pippinry.exchange.internal.archive;

import java.time.Instant;
import java.util.OptionalLong;
import pippinry.model.Row;
import pippinry.model.Settled;
import pippinry.model.record.Kind;

/** A line of an archive after its head. */
public sealed interface ArchiveLine {

    /** A record as it stands in the program. */
    record Standing<T extends Record>(Kind<T> kind, Row<T> row) implements ArchiveLine {}

    /** An edit of the history; the lines of what it changed follow. */
    record Edited(long number, Instant time, String author, String reason, int records, OptionalLong takesBack)
            implements ArchiveLine {}

    /** What the edit before it changed. */
    record Changed(long of, Settled<?> change) implements ArchiveLine {}
}
