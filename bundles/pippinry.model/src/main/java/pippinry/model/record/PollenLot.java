package pippinry.model.record;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;

/** Pollen of a genotype. A thawed vial is not frozen again (common practice, no source). */
public record PollenLot(
        @Needed Code<PollenLot> lot,
        Optional<Code<Genotype>> genotype,
        String source,
        String stage,
        Optional<PartialDate> gatheredOn,
        String stored,
        OptionalInt vials,
        Optional<PartialDate> testedOn,
        OptionalDouble germinatedPct,
        String note) {

    public PollenLot {
        Checks.range("germinated_pct", germinatedPct, 0, 100);
        Checks.range("vials", vials, 0, 1_000_000);
    }
}
