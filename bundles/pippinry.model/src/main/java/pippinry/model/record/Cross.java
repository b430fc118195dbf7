package pippinry.model.record;

import java.util.Optional;
import java.util.OptionalInt;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;
import pippinry.model.value.PollenParent;

/** A pair of genotypes in a year, with its reason and the numbers wanted. */
public record Cross(
        @Needed Code<Cross> code,
        Optional<PartialDate> year,
        Optional<Code<Genotype>> seedParent,
        PollenParent<Genotype> pollenParent,
        String reason,
        OptionalInt seedlingsWanted,
        String note) {

    public Cross {
        Checks.range("seedlings_wanted", seedlingsWanted, 0, 10_000_000);
    }
}
