package pippinry.model;

import java.util.Optional;
import pippinry.model.record.Kind;

/**
 * A change as it was carried out, with what stood there before, so that it can be told and taken back.
 *
 * @param id the row
 * @param before empty for a new row
 * @param after empty for a row taken out
 */
public record Settled<T extends Record>(Kind<T> kind, int id, Optional<T> before, Optional<T> after) {

    public Settled<T> reversed() {
        return new Settled<>(kind, id, after, before);
    }
}
