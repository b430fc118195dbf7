package pippinry.model.record;

import java.util.Optional;
import java.util.OptionalInt;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;

/** Seeds put from one lot into another when lots are split or merged. */
public record LotMove(
        @Needed Code<SeedLot> from, Optional<Code<SeedLot>> to, Optional<PartialDate> date, OptionalInt seeds) {

    public LotMove {
        Checks.unlike("to", from, to);
        Checks.range("seeds", seeds, 0, 10_000_000);
    }
}
