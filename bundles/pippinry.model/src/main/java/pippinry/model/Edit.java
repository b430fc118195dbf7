package pippinry.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import pippinry.model.record.Kind;

/**
 * What a person wants changed, with author and reason; it is applied whole or not at all.
 *
 * @param author initials of the hand
 * @param reason a few words for the history, such as {@code scores of row 7}
 */
public record Edit(String author, String reason, List<Change<?>> changes) {

    public Edit {
        changes = List.copyOf(changes);
        if (author.isBlank() || reason.isBlank()) {
            throw new IllegalArgumentException("An edit has an author and a reason");
        }
    }

    public static Draft by(String author, String reason) {
        return new Draft(author, reason);
    }

    /** An edit while it is being written. */
    public static final class Draft {

        private final String author;
        private final String reason;
        private final List<Change<?>> changes = new ArrayList<>();

        private Draft(String author, String reason) {
            this.author = author;
            this.reason = reason;
        }

        /** A new row; a kind with a key takes the place of the row with the same key, if there is one. */
        public <T extends Record> Draft put(Kind<T> kind, T value) {
            changes.add(new Change<>(kind, OptionalInt.empty(), Optional.of(value)));
            return this;
        }

        public <T extends Record> Draft replace(Kind<T> kind, int id, T value) {
            changes.add(new Change<>(kind, OptionalInt.of(id), Optional.of(value)));
            return this;
        }

        public <T extends Record> Draft remove(Kind<T> kind, int id) {
            changes.add(new Change<>(kind, OptionalInt.of(id), Optional.empty()));
            return this;
        }

        public Edit done() {
            return new Edit(author, reason, changes);
        }
    }
}
