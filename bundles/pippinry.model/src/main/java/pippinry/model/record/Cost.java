package pippinry.model.record;

import java.util.Optional;
import java.util.OptionalDouble;
import pippinry.model.value.PartialDate;

/** Money or hours spent on a batch. */
public record Cost(
        @Needed String batch, Optional<PartialDate> date, String text, OptionalDouble amount, OptionalDouble hours) {}
