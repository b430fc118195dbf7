package pippinry.pedigree.internal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Function;
import java.util.stream.IntStream;
import pippinry.model.Program;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.value.Code;
import pippinry.model.value.PollenParent;
import pippinry.pedigree.internal.kinship.Kinship;
import pippinry.pedigree.internal.kinship.LinksBetween;
import pippinry.pedigree.internal.kinship.PedigreeDraft;

/**
 * The pedigree of one program as it stood after one edit. A triploid has two of its chromosome sets from the seed parent,
 * unless the pollen parent alone has four. May be used by several threads.
 */
public final class ProgramPedigree {
    private static final int DIPLOID = 2;
    private static final int TETRAPLOID = 4;

    private final List<Genotype> genotypes = new ArrayList<>();
    private final Map<String, Integer> numbers = new HashMap<>();
    private final Kinship kinship;
    private final Queue<Kinship.Pairs> pairs = new ConcurrentLinkedQueue<>();

    private ProgramPedigree(Program program, Function<Genotype, double[]> chances) {
        PedigreeDraft draft = new PedigreeDraft();
        program.table(Kinds.GENOTYPES).forEach(row -> {
            numbers.put(row.value().code().text(), draft.add());
            genotypes.add(row.value());
        });
        for (int who = 0; who < genotypes.size(); who++) take(draft, who, genotypes.get(who), chances);
        this.kinship = Kinship.of(draft.build());
    }

    /**
     * Reckons the pedigree.
     *
     * @param chances of the candidates of a genotype that has several, in their order
     */
    static ProgramPedigree of(Program program, Function<Genotype, double[]> chances) {
        return new ProgramPedigree(program, chances);
    }

    private void take(PedigreeDraft draft, int who, Genotype genotype, Function<Genotype, double[]> chances) {
        int seed = genotype.seedParent().map(this::number).orElse(PedigreeDraft.UNKNOWN);
        draft.seedParent(who, seed);
        draft.pollenParent(who, pollen(draft, genotype, seed, chances));
        genotype.sportOf().ifPresent(origin -> draft.sport(who, number(origin)));
        int ploidy = genotype.ploidy().orElse(DIPLOID);
        if (ploidy != DIPLOID) {
            int fromPollen = pollenBroughtMore(genotype) ? ploidy - ploidy / 2 : ploidy / 2;
            draft.genomes(who, ploidy - fromPollen, fromPollen);
        }
    }

    private int pollen(PedigreeDraft draft, Genotype genotype, int seed, Function<Genotype, double[]> chances) {
        PollenParent<Genotype> pollen = genotype.pollenParent();
        int[] candidates = pollen.candidates().stream().mapToInt(this::number).toArray();
        return switch (pollen.how()) {
            case KNOWN -> candidates[0];
            case CANDIDATES -> draft.oneOf(candidates, chances.apply(genotype));
            case OPEN -> PedigreeDraft.OPEN;
            case SELF -> seed;
            case UNKNOWN -> PedigreeDraft.UNKNOWN;
        };
    }

    private boolean pollenBroughtMore(Genotype genotype) {
        List<Code<Genotype>> pollen = genotype.pollenParent().candidates();
        return pollen.size() == 1
                && ploidy(pollen.get(0)) >= TETRAPLOID
                && genotype.seedParent().map(this::ploidy).orElse(DIPLOID) < TETRAPLOID;
    }

    private int ploidy(Code<Genotype> code) {
        OptionalInt ploidy = genotypes.get(number(code)).ploidy();
        return ploidy.orElse(DIPLOID);
    }

    /** The place of a genotype among all; refused when it is not on file. */
    public int number(Code<Genotype> code) {
        Integer number = numbers.get(code.text());
        if (number == null) throw new IllegalArgumentException("no genotype " + code + " is on file");
        return number;
    }

    /** The genotype at a place. */
    public Genotype genotype(int number) {
        return genotypes.get(number);
    }

    /** Relationship of everybody. */
    public Kinship kinship() {
        return kinship;
    }

    /** Who is nobody's parent, nobody's candidate and no sport's origin. */
    int[] withoutOffspring() {
        Set<Integer> parents = new HashSet<>();
        for (Genotype genotype : genotypes) {
            genotype.seedParent().ifPresent(parent -> parents.add(number(parent)));
            genotype.sportOf().ifPresent(origin -> parents.add(number(origin)));
            genotype.pollenParent().candidates().forEach(parent -> parents.add(number(parent)));
        }
        return IntStream.range(0, genotypes.size())
                .filter(who -> !parents.contains(who))
                .toArray();
    }

    double coancestry(Code<Genotype> one, Code<Genotype> other) {
        Kinship.Pairs idle = Optional.ofNullable(pairs.poll()).orElseGet(kinship::pairs);
        double f = idle.coancestry(number(one), number(other));
        pairs.add(idle);
        return f;
    }

    List<LinksBetween.Link> linksBetween(Code<Genotype> one, Code<Genotype> other) {
        return LinksBetween.of(kinship.graph(), number(one), number(other));
    }
}
