package pippinry.model.record;

import java.util.Optional;
import java.util.OptionalDouble;
import pippinry.model.value.Code;

/** A trait of the breeder's own. */
public record OwnTrait(
        @Needed Code<OwnTrait> code,
        String name,
        String scale,
        OptionalDouble low,
        OptionalDouble high,
        String unit,
        Optional<Direction> direction,
        String states) {}
