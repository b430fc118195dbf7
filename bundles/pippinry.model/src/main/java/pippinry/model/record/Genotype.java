package pippinry.model.record;

import java.util.Optional;
import java.util.OptionalInt;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;
import pippinry.model.value.PollenParent;

/** One genetic individual: cultivar, species, seedling, selection, rootstock or sport. A sport points at its origin. */
public record Genotype(
        @Needed Code<Genotype> code,
        String name,
        String crop,
        Optional<GenotypeKind> kind,
        OptionalInt ploidy,
        Optional<Code<Genotype>> seedParent,
        PollenParent<Genotype> pollenParent,
        Optional<Certainty> seedLink,
        Optional<Certainty> pollenLink,
        String linkGround,
        Optional<Code<Genotype>> sportOf,
        Optional<PartialDate> year,
        String origin,
        String note) {

    public Genotype {
        Checks.parentCode("code", code);
        Checks.range("ploidy", ploidy, 1, 8);
        Checks.unlike("seed_parent", code, seedParent);
        Checks.unlike("sport_of", code, sportOf);
        if (pollenParent.candidates().contains(code)) {
            throw new Unfit("pollen_parent", pollenParent, "another genotype than the one itself");
        }
    }
}
