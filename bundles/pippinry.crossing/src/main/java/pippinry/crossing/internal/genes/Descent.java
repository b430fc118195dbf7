package pippinry.crossing.internal.genes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pippinry.model.Program;
import pippinry.model.record.Certainty;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.value.Code;
import pippinry.model.value.PollenParent;

/**
 * Where one set of chromosomes of a genotype comes from.
 *
 * @param candidates parents it may come from, each as likely as the others; empty when nothing is known
 * @param wrong probability that it comes from none of them: {@value #SURE} on a sure link (slips of tag and lab), {@value
 *     #LIKELY} on a likely and {@value #DOUBTFUL} on a doubtful one (our choice)
 */
record Descent(List<Code<Genotype>> candidates, double wrong) {

    private static final double SURE = 0.01;
    private static final double LIKELY = 0.1;
    private static final double DOUBTFUL = 0.4;

    /** More candidates than this say no more than a parent that is not known. */
    private static final int MOST_CANDIDATES = 3;

    private static final Descent NOTHING = new Descent(List.of(), 1);

    Descent {
        candidates = List.copyOf(candidates);
    }

    static Descent ofSeedParent(Program program, Genotype child) {
        return child.seedParent()
                .map(parent -> new Descent(List.of(clone(program, parent)), wrong(child.seedLink())))
                .orElse(NOTHING);
    }

    static Descent ofPollenParent(Program program, Genotype child) {
        if (child.pollenParent().how() == PollenParent.How.SELF) {
            return ofSeedParent(program, child);
        }
        List<Code<Genotype>> clones = new ArrayList<>();
        for (Code<Genotype> candidate : child.pollenParent().candidates()) {
            clones.add(clone(program, candidate));
        }
        boolean useful = !clones.isEmpty() && clones.size() <= MOST_CANDIDATES;
        return useful ? new Descent(clones, wrong(child.pollenLink())) : NOTHING;
    }

    /** A sport is its clone. */
    static Code<Genotype> clone(Program program, Code<Genotype> genotype) {
        return program.find(Kinds.GENOTYPES, genotype)
                .flatMap(Genotype::sportOf)
                .filter(origin -> !origin.equals(genotype))
                .orElse(genotype);
    }

    private static double wrong(Optional<Certainty> link) {
        return switch (link.orElse(Certainty.SURE)) {
            case SURE -> SURE;
            case LIKELY -> LIKELY;
            case DOUBTFUL -> DOUBTFUL;
        };
    }
}
