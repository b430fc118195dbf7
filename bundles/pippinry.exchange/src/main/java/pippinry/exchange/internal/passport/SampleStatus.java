package pippinry.exchange.internal.passport;

import java.util.Optional;
import pippinry.model.record.Genotype;
import pippinry.model.record.GenotypeKind;
import pippinry.model.value.PollenParent;

/**
 * Biological status (SAMPSTAT) of a genotype; which code stands for which kind is our own reading of the list of Alercia,
 * Diulgheroff & Mackay 2015.
 */
record SampleStatus(String code, String remark) {

    private static final String BREEDING_MATERIAL = "400";
    private static final String BREEDERS_LINE = "410";
    private static final String HYBRID = "412";
    private static final String MUTANT = "421";
    private static final String IMPROVED_CULTIVAR = "500";
    private static final String OTHER = "999";

    static SampleStatus of(Genotype genotype) {
        Optional<GenotypeKind> kind = genotype.kind();
        return kind.isEmpty()
                ? new SampleStatus(OTHER, "kind not on file")
                : switch (kind.get()) {
                    case CULTIVAR, ROOTSTOCK -> new SampleStatus(IMPROVED_CULTIVAR, "");
                    case SPECIES -> new SampleStatus(OTHER, "species, where it comes from is not on file");
                    case SELECTION -> new SampleStatus(BREEDERS_LINE, "");
                    case SPORT -> new SampleStatus(MUTANT, "");
                    case SEEDLING -> new SampleStatus(isOfKnownCross(genotype) ? HYBRID : BREEDING_MATERIAL, "");
                };
    }

    private static boolean isOfKnownCross(Genotype genotype) {
        return genotype.seedParent().isPresent() && genotype.pollenParent().how() == PollenParent.How.KNOWN;
    }
}
