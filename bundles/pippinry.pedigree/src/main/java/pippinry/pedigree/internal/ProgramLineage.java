package pippinry.pedigree.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pippinry.model.Program;
import pippinry.model.ask.ParentChance;
import pippinry.model.record.Certainty;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.value.Code;
import pippinry.model.value.PollenParent;
import pippinry.pedigree.internal.kinship.LinksBetween;
import pippinry.pedigree.internal.kinship.LinksBetween.Side;
import pippinry.pedigree.internal.parentage.ProgramParentage;
import pippinry.traits.CropPack;

/**
 * Pedigree and parentage of one state of a program. Where a pollen parent is one of several candidates, what the markers say of
 * them weighs their shares in the average relationship. May be used by several threads.
 */
final class ProgramLineage {
    private final Program program;
    private final ProgramParentage parentage;
    private final ProgramPedigree pedigree;

    private ProgramLineage(Program program, List<CropPack> packs) {
        this.program = program;
        this.parentage = ProgramParentage.of(program, packs);
        this.pedigree = ProgramPedigree.of(program, this::chances);
    }

    static ProgramLineage of(Program program, List<CropPack> packs) {
        return new ProgramLineage(program, packs);
    }

    /** Chances of the candidates, taken that it was one of them. */
    private double[] chances(Genotype child) {
        double[] chances = parentage.weighed(child).pollenParents();
        double sum = Arrays.stream(chances).sum();
        return Arrays.stream(chances).map(chance -> chance / sum).toArray();
    }

    ProgramPedigree pedigree() {
        return pedigree;
    }

    ProgramParentage parentage() {
        return parentage;
    }

    List<ParentChance> pollenParents(Code<Genotype> child) {
        return parentage.weighed(genotype(child)).chances();
    }

    private Genotype genotype(Code<Genotype> code) {
        return pedigree.genotype(pedigree.number(code));
    }

    /** Why links between two are not sure. */
    List<String> doubtsBetween(Code<Genotype> one, Code<Genotype> other) {
        Set<String> doubts = new LinkedHashSet<>();
        for (LinksBetween.Link link : pedigree.linksBetween(one, other)) {
            Genotype child = pedigree.genotype(link.child());
            LinkWords.doubt(child, link.side()).ifPresent(doubts::add);
            parentage.weighed(child).words().ifPresent(doubts::add);
        }
        return List.copyOf(doubts);
    }

    /** Why the descent of one is not sure: its own links, then what weighs on those of its ancestors. */
    List<String> doubts(Code<Genotype> code) {
        Genotype itself = genotype(code);
        Set<String> doubts = new LinkedHashSet<>(ofParents(itself));
        List<Genotype> line = new ArrayList<>(List.of(itself));
        for (int next = 0; next < line.size(); next++) {
            Genotype descendant = line.get(next);
            if (next > 0 && weighs(descendant)) doubts.addAll(ofParents(descendant));
            parents(descendant).stream()
                    .filter(parent -> !line.contains(parent))
                    .forEach(line::add);
        }
        return List.copyOf(doubts);
    }

    private List<String> ofParents(Genotype child) {
        List<String> doubts = new ArrayList<>();
        LinkWords.doubt(child, Side.SEED).ifPresent(doubts::add);
        LinkWords.doubt(child, Side.POLLEN).ifPresent(doubts::add);
        parents(child).forEach(parent -> LinkWords.younger(child, parent).ifPresent(doubts::add));
        parentage.weighed(child).words().ifPresent(doubts::add);
        return doubts;
    }

    /** What is merely likely of an ancestor is not repeated below it: most published pedigrees are no more than that. */
    private boolean weighs(Genotype ancestor) {
        Optional<Certainty> doubtful = Optional.of(Certainty.DOUBTFUL);
        return ancestor.seedLink().equals(doubtful)
                || ancestor.pollenLink().equals(doubtful)
                || ancestor.pollenParent().how() == PollenParent.How.CANDIDATES
                || ancestor.pollenParent().how() == PollenParent.How.OPEN
                || parents(ancestor).stream()
                        .anyMatch(parent -> LinkWords.younger(ancestor, parent).isPresent())
                || !parentage.weighed(ancestor).possible();
    }

    private List<Genotype> parents(Genotype child) {
        List<Code<Genotype>> codes = new ArrayList<>();
        if (child.sportOf().isPresent()) {
            codes.add(child.sportOf().get());
        } else {
            child.seedParent().ifPresent(codes::add);
            codes.addAll(child.pollenParent().candidates());
        }
        return codes.stream()
                .map(code -> program.find(Kinds.GENOTYPES, code))
                .flatMap(Optional::stream)
                .toList();
    }
}
