package pippinry.store.internal.ledger;

import java.time.Instant;
import java.util.List;
import java.util.OptionalLong;
import pippinry.model.Settled;

/** One line of a ledger, read. */
sealed interface Line {

    record Header(SegmentHead head) implements Line {}

    /** A whole edit; the changes are empty if only heads were asked for. */
    record Whole(EditHead head, List<Settled<?>> changes) implements Line {}

    record Begin(EditHead head) implements Line {}

    record Part(int part, long of, List<Settled<?>> changes) implements Line {}

    record Commit(long edit, int parts) implements Line {}

    /** The fields of a line as they come, before it is clear what they make. */
    final class Fields {

        OptionalLong edit = OptionalLong.empty();
        OptionalLong begin = OptionalLong.empty();
        OptionalLong commit = OptionalLong.empty();
        OptionalLong takesBack = OptionalLong.empty();
        String ledger;
        String program = "";
        int format;
        int segment;
        Instant time = Instant.EPOCH;
        String author = "";
        String reason = "";
        int records;
        int part;
        int parts;
        long of;
        List<Settled<?>> changes = List.of();

        Line line() {
            if (edit.isPresent()) {
                return new Whole(head(edit.getAsLong()), changes);
            }
            if (begin.isPresent()) {
                return new Begin(head(begin.getAsLong()));
            }
            if (commit.isPresent()) {
                return new Commit(commit.getAsLong(), parts);
            }
            return SegmentHead.LEDGER.equals(ledger)
                    ? new Header(new SegmentHead(format, segment, program, time))
                    : new Part(part, of, changes);
        }

        private EditHead head(long number) {
            return new EditHead(number, time, author, reason, records, takesBack);
        }
    }
}
