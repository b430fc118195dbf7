package pippinry.model.record;

import java.util.Optional;
import java.util.OptionalInt;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;

/** Fruit of a sample taken out of store. */
public record TakeOut(@Needed Code<Sample> sample, Optional<PartialDate> outOn, OptionalInt fruits, String note) {

    public TakeOut {
        Checks.range("fruits", fruits, 0, 10_000_000);
    }
}
