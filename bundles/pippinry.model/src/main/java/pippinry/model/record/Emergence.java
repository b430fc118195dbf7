package pippinry.model.record;

import java.util.Optional;
import java.util.OptionalInt;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;

/** Seedlings of a lot that stood above the soil on a day, counted in all. */
public record Emergence(@Needed Code<SeedLot> lot, Optional<PartialDate> date, OptionalInt emerged) {

    public Emergence {
        Checks.range("emerged", emerged, 0, 10_000_000);
    }
}
