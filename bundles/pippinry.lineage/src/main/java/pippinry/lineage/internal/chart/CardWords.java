package pippinry.lineage.internal.chart;

import pippinry.model.record.Genotype;
import pippinry.model.value.PartialDate;
import pippinry.model.value.PollenParent;

/** The second line of a genotype's card: its name, else what it is. */
final class CardWords {

    private CardWords() {}

    static String of(Genotype genotype) {
        if (!genotype.name().isBlank()) {
            return genotype.name();
        }
        String kind = genotype.kind().map(known -> known.word()).orElse("genotype");
        String how = genotype.pollenParent().how() == PollenParent.How.OPEN
                ? ", open"
                : genotype.pollenParent().how() == PollenParent.How.SELF ? ", selfed" : "";
        return kind
                + genotype.year()
                        .map(PartialDate::toString)
                        .map(year -> " " + year)
                        .orElse("")
                + how;
    }
}
