package pippinry.model.record;

import java.util.Optional;
import java.util.OptionalInt;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;

/** One visit to a pollinated branch. */
public record Visit(
        @Needed Code<Pollination> pollination,
        Optional<PartialDate> time,
        Optional<Done> did,
        OptionalInt count,
        Optional<Code<PollenLot>> pollenLot,
        String hand,
        String weather,
        String note) {

    public Visit {
        Checks.range("count", count, 0, 1_000_000);
    }
}
