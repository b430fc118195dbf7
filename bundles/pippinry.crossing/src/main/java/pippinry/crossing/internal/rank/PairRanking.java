package pippinry.crossing.internal.rank;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleConsumer;
import pippinry.crossing.internal.bloom.BloomFit;
import pippinry.crossing.internal.genes.GeneBook;
import pippinry.crossing.internal.genes.MapFunction;
import pippinry.crossing.internal.quantity.QuantityBook;
import pippinry.crossing.internal.rates.RateBook;
import pippinry.model.Program;
import pippinry.model.ask.Relationship;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.value.Code;
import pippinry.traits.Compatibility;
import pippinry.traits.CropPack;
import pippinry.traits.Fertility;

/**
 * Judges every possible pair of parents and puts the pairs in order.
 *
 * <p>The order goes by worth, a product of factors from 0 to 1, each of which is handed out with its meaning: share of
 * seedlings with all musts that loci decide, vigour left after inbreeding, chance that pollen works, bloom, ploidy, wishes.
 * {@link Worth} says where each comes from. Only the pairs that are shown get seedlings and flowers reckoned.
 */
public final class PairRanking {

    private static final Comparator<Draft> BEST_FIRST = Comparator.comparingDouble(Draft::worth)
            .reversed()
            .thenComparing(Draft::seedParent)
            .thenComparing(Draft::pollenParent);

    private final Map<String, Draft> judged = new HashMap<>();
    private final Program program;
    private final Optional<CropPack> pack;
    private final Wishes wishes;
    private final Candidates candidates;
    private final GeneBook genes;
    private final RateBook rates;
    private final QuantityBook quantities;
    private final Optional<Relationship> relationship;
    private final Worth worth;
    private final Map<String, Compatibility> compatibilities = new HashMap<>();
    private final Map<Code<Genotype>, Double> inbreedings = new HashMap<>();
    private final List<String> notes = new ArrayList<>();
    private int impossible;

    public PairRanking(Program program, Optional<CropPack> pack, Optional<Relationship> relationship, Wishes wishes) {
        this.program = program;
        this.pack = pack;
        this.wishes = wishes;
        this.relationship = relationship;
        this.candidates = new Candidates(program);
        Set<Code<Genotype>> parents = new LinkedHashSet<>(wishes.seedParents(candidates.seedParents()));
        parents.addAll(wishes.pollenParents(candidates.pollenParents()));
        this.genes = new GeneBook(program, pack, MapFunction.HALDANE, parents);
        this.rates = new RateBook(program, pack);
        this.quantities = new QuantityBook(program, pack);
        this.worth = new Worth(program, genes, quantities, rates, BloomFit.of(program));
        notes.addAll(PlainNotes.of(program, pack, relationship, rates, quantities));
    }

    /** The best pairs, at most as many as wished for. */
    public List<RankedPair> best(DoubleConsumer progress) {
        List<Draft> drafts = drafts(progress);
        drafts.sort(BEST_FIRST);
        PairDetail detail = new PairDetail(program, genes, rates, wishes, pack);
        List<RankedPair> best = new ArrayList<>();
        for (Draft draft : drafts.subList(0, Math.min(wishes.limit(), drafts.size()))) {
            best.add(detail.complete(draft, best.size() + 1));
        }
        return best;
    }

    /** Every pair in order, judged but without seedlings, flowers and reasons, which cost more than the rest together. */
    public List<RankedPair> glance(DoubleConsumer progress) {
        List<Draft> drafts = drafts(progress);
        drafts.sort(BEST_FIRST);
        List<RankedPair> pairs = new ArrayList<>();
        for (Draft draft : drafts) {
            RankedPair pair = PairDetail.glance(draft, pairs.size() + 1);
            judged.put(key(pair.seedParent(), pair.pollenParent()), draft);
            pairs.add(pair);
        }
        return pairs;
    }

    /** All that is known of a pair that was glanced at. */
    public RankedPair complete(RankedPair pair) {
        Draft draft = judged.get(key(pair.seedParent(), pair.pollenParent()));
        return new PairDetail(program, genes, rates, wishes, pack).complete(draft, pair.rank());
    }

    private static String key(Code<Genotype> seed, Code<Genotype> pollen) {
        return seed + "\n" + pollen;
    }

    /** What holds for all pairs: absences, what is not known, cautions. Complete after {@link #best}. */
    public List<String> notes() {
        List<String> all = new ArrayList<>(notes);
        all.addAll(candidates.notes());
        all.addAll(genes.notes());
        if (impossible > 0) {
            all.add(impossible + " pairs cannot fertilise each other by their S-alleles; they are left out"
                    + " (a strong warning, not a proof).");
        }
        return all;
    }

    private List<Draft> drafts(DoubleConsumer progress) {
        List<Code<Genotype>> seeds = wishes.seedParents(candidates.seedParents());
        List<Code<Genotype>> pollens = wishes.pollenParents(candidates.pollenParents());
        List<Draft> drafts = new ArrayList<>();
        for (int i = 0; i < seeds.size(); i++) {
            progress.accept((double) i / seeds.size());
            for (Code<Genotype> pollen : pollens) {
                if (!oneClone(seeds.get(i), pollen)) {
                    draft(seeds.get(i), pollen).ifPresent(drafts::add);
                }
            }
        }
        return drafts;
    }

    private Optional<Draft> draft(Code<Genotype> seed, Code<Genotype> pollen) {
        Compatibility match = compatibility(seed, pollen);
        if (match.fertility() == Fertility.NONE && !wishes.impossibleToo()) {
            impossible++;
            return Optional.empty();
        }
        Optional<Double> inbreeding = relationship.map(asked -> asked.coancestry(program, seed, pollen));
        return Optional.of(worth.of(seed, pollen, match, inbreeding, (inbreeding(seed) + inbreeding(pollen)) / 2));
    }

    private double inbreeding(Code<Genotype> genotype) {
        return inbreedings.computeIfAbsent(genotype, any -> relationship
                .map(asked -> asked.inbreeding(program, genotype))
                .orElse(0.0));
    }

    private Compatibility compatibility(Code<Genotype> seed, Code<Genotype> pollen) {
        String key = genes.sAlleles(seed).series() + "|" + genes.sAlleles(seed) + "|"
                + genes.sAlleles(pollen).series() + "|" + genes.sAlleles(pollen);
        return compatibilities.computeIfAbsent(
                key, any -> Compatibility.of(genes.sAlleles(seed), genes.sAlleles(pollen)));
    }

    /** A kind with itself, its sport or a sister sport: that is selfing. */
    private boolean oneClone(Code<Genotype> one, Code<Genotype> other) {
        return origin(one).equals(origin(other));
    }

    private Code<Genotype> origin(Code<Genotype> genotype) {
        return program.find(Kinds.GENOTYPES, genotype)
                .flatMap(Genotype::sportOf)
                .orElse(genotype);
    }
}
