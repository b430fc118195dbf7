package pippinry.model.record;

import java.util.Optional;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;

/** Which plant stood where, from when to when. */
public record Occupancy(
        @Needed Code<Plant> plant,
        Optional<Code<Block>> block,
        String row,
        String place,
        Optional<PartialDate> from,
        Optional<PartialDate> to) {

    public Occupancy {
        Checks.order("to", from, to);
    }
}
