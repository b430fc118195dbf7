package pippinry.pedigree.internal.parentage;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pippinry.model.Program;
import pippinry.model.record.Certainty;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.value.Code;
import pippinry.model.value.PollenParent;
import pippinry.traits.CropPack;

/**
 * What the markers of a program say of the parents on record.
 *
 * <p>Assumed before any marker is read (ours, no source): a sure link is wrong once in a hundred, a likely one once in ten, a
 * doubtful one every second time; a link that nothing was said of counts as sure, candidates that nothing was said of as likely.
 */
public final class ProgramParentage {
    private static final double SURE_WRONG = 0.01;
    private static final double LIKELY_WRONG = 0.1;
    private static final double DOUBTFUL_WRONG = 0.5;

    private final List<Genotype> genotypes;
    private final Map<Code<Genotype>, Integer> numbers = new HashMap<>();
    private final List<String> faults = new ArrayList<>();
    private final ParentageTest test;

    private ProgramParentage(Program program, List<CropPack> packs) {
        this.genotypes = program.table(Kinds.GENOTYPES).stream().toList();
        for (Genotype genotype : genotypes) numbers.put(genotype.code(), numbers.size());
        this.test = new ParentageTest(ReadMarkers.of(program, PackOfProgram.of(program, packs), faults));
    }

    public static ProgramParentage of(Program program, List<CropPack> packs) {
        return new ProgramParentage(program, packs);
    }

    /** Alleles on file that cannot be read, with what was expected. */
    public List<String> faults() {
        return List.copyOf(faults);
    }

    /** Weighs the parents on record of a genotype on file. */
    public ParentsWeighed weighed(Genotype child) {
        List<Code<Genotype>> pollen = child.pollenParent().how() == PollenParent.How.SELF
                ? child.seedParent().map(List::of).orElse(List.of())
                : child.pollenParent().candidates();
        return weighed(child, pollen);
    }

    /** Weighs these pollen parents instead of those on record. */
    public ParentsWeighed weighed(Genotype child, List<Code<Genotype>> pollenParents) {
        boolean several = pollenParents.size() > 1;
        Fit fit = test.of(new Claim(
                numbers.get(child.code()),
                child.seedParent().map(numbers::get).orElse(Marker.ANYBODY),
                wrong(child.seedLink(), SURE_WRONG),
                pollenParents.stream().mapToInt(numbers::get).toArray(),
                wrong(child.pollenLink(), several ? LIKELY_WRONG : SURE_WRONG)));
        return new ParentsWeighed(child, pollenParents, fit);
    }

    private static double wrong(Optional<Certainty> link, double unsaid) {
        return link.map(how -> switch (how) {
                    case SURE -> SURE_WRONG;
                    case LIKELY -> LIKELY_WRONG;
                    case DOUBTFUL -> DOUBTFUL_WRONG;
                })
                .orElse(unsaid);
    }

    /** Everybody on file, in their order. */
    public List<Genotype> genotypes() {
        return genotypes;
    }
}
