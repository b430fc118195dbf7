package pippinry.model.record;

import java.util.Optional;
import java.util.OptionalDouble;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;

/** A spell of cold of a seed lot: refrigerator, damp sand, or outdoors by weather. */
public record Chilling(
        @Needed Code<SeedLot> lot,
        Optional<PartialDate> from,
        Optional<PartialDate> to,
        String how,
        OptionalDouble tempC) {

    public Chilling {
        Checks.order("to", from, to);
        Checks.range("temp_c", tempC, -60, 60);
    }
}
