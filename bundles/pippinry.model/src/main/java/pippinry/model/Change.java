package pippinry.model;

import java.util.Optional;
import java.util.OptionalInt;
import pippinry.model.record.Kind;

/**
 * One record put in or taken out.
 *
 * @param id the row it is about; empty for a new row, or for one found by its key
 * @param after what stands there then; empty when the row is taken out
 */
public record Change<T extends Record>(Kind<T> kind, OptionalInt id, Optional<T> after) {

    public Change {
        if (id.isEmpty() && after.isEmpty()) {
            throw new IllegalArgumentException("A removal names its row");
        }
    }
}
