package pippinry.model.record;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import pippinry.model.value.Code;

/** A piece of ground in rows; local metres, north up, no world coordinates. */
public record Block(
        @Needed Code<Block> block,
        OptionalDouble xM,
        OptionalDouble yM,
        OptionalInt rows,
        OptionalInt placesPerRow,
        OptionalDouble rowSpacingM,
        OptionalDouble placeSpacingM,
        OptionalDouble bearingDeg,
        OptionalDouble headlandM,
        String support,
        String previousCrop,
        String note) {

    public Block {
        Checks.range("rows", rows, 0, 100_000);
        Checks.range("places_per_row", placesPerRow, 0, 100_000);
        Checks.range("row_spacing_m", rowSpacingM, 0, 1_000);
        Checks.range("place_spacing_m", placeSpacingM, 0, 1_000);
        Checks.range("bearing_deg", bearingDeg, -360, 360);
    }
}
