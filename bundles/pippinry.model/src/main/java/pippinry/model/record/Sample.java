package pippinry.model.record;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;

/** A picked lot of fruit and how it is shared out; fruit pressed is gone. */
public record Sample(
        @Needed Code<Sample> sample,
        Optional<Code<Plant>> plant,
        Optional<PartialDate> pickedOn,
        OptionalInt fruits,
        OptionalInt tasted,
        OptionalInt pressed,
        OptionalInt stored,
        OptionalDouble storeC,
        String note) {

    public Sample {
        Checks.range("fruits", fruits, 0, 10_000_000);
        Checks.range("tasted", tasted, 0, 10_000_000);
        Checks.range("pressed", pressed, 0, 10_000_000);
        Checks.range("stored", stored, 0, 10_000_000);
        Checks.range("store_c", storeC, -60, 60);
    }
}
