package pippinry.model.record;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import pippinry.model.value.Code;

/** A row where it differs from what its block says; from which end it is counted and whether guards and gaps count. */
public record BlockRow(
        @Needed Code<Block> block,
        @Needed String row,
        Optional<RowKind> kind,
        OptionalDouble xM,
        OptionalDouble yM,
        OptionalDouble bearingDeg,
        OptionalInt places,
        OptionalDouble spacingM,
        OptionalDouble firstPlaceM,
        String gaps,
        String countedFrom,
        Optional<YesNo> guardsCount,
        String training,
        String note) {}
