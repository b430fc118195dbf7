package pippinry.model.record;

import java.util.Optional;
import java.util.OptionalInt;
import pippinry.model.value.PartialDate;
import pippinry.model.value.Subject;

/** Flowers, fruits, seeds, seedlings or trees lost, with their cause. */
public record Loss(@Needed Subject subject, Optional<PartialDate> date, OptionalInt number, String cause, String note) {

    public Loss {
        Checks.range("number", number, 0, 10_000_000);
    }
}
