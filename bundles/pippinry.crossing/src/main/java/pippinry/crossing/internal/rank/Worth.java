package pippinry.crossing.internal.rank;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pippinry.crossing.internal.bloom.BloomFit;
import pippinry.crossing.internal.genes.GeneBook;
import pippinry.crossing.internal.genes.GeneticGoal;
import pippinry.crossing.internal.genes.SeedlingShares;
import pippinry.crossing.internal.quantity.CrossQuantity;
import pippinry.crossing.internal.quantity.QuantityBook;
import pippinry.crossing.internal.rates.RateBook;
import pippinry.model.Program;
import pippinry.model.ask.HouseRates.Step;
import pippinry.model.ask.Interval;
import pippinry.model.record.Genotype;
import pippinry.model.record.Goal;
import pippinry.model.record.GoalKind;
import pippinry.model.record.Kinds;
import pippinry.model.value.Code;
import pippinry.statistics.proportions.BetaBelief;
import pippinry.traits.Compatibility;
import pippinry.traits.Fertility;

/**
 * The factors of a cross's worth.
 *
 * <ul>
 *   <li>musts: expected share of seedlings with every must that genes decide or records speak to; musts are taken as
 *       independent; a must of which nothing is known of either parent stays out, for this pair as for the others, unless genes
 *       decide it: then it counts {@value #NOTHING_TOLD}, so that the pair is neither favoured nor shut out (our choice)
 *   <li>vigour: 1 - 0.8 F; seedling height of Japanese pear fell from 130 to 130 - 104 F cm (994 seedlings, 29 families)
 *   <li>pollen: the chance that the style lets any pollen through; half-compatible counts full, since hand pollination puts
 *       many more grains on the stigma than there are ovules
 *   <li>ploidy: set with pollen of a triploid over the usual set, both published; a triploid seed parent counts
 *       {@value #TRIPLOID_SEED_PARENT} (few seeds, weak seedlings; from memory)
 *   <li>bloom: 1 when the pollen parent flowers first or together or its pollen is in store, else falling by
 *       {@value #LOST_PER_DAY} a day to a half, since flowers must be held back or pollen of another year be had (our choice)
 *   <li>wishes: (1 + share) / 2 for each wish and help that genes tell, times e to the weighted mean lead of the family in the
 *       wishes that records speak to, in standard deviations (our choice)
 * </ul>
 */
final class Worth {

    private static final double NOTHING_TOLD = 0.25;
    private static final double TRIPLOID_SEED_PARENT = 0.25;
    private static final double LOST_PER_DAY = 0.1;
    private static final double LOSS_OF_VIGOUR = 0.8;

    private final GeneBook genes;
    private final QuantityBook quantities;
    private final BloomFit bloom;
    private final Set<Code<Genotype>> pollenInStore = new HashSet<>();
    private final double triploidPollen;
    private final int decidedMusts;

    Worth(Program program, GeneBook genes, QuantityBook quantities, RateBook rates, BloomFit bloom) {
        this.genes = genes;
        this.quantities = quantities;
        this.bloom = bloom;
        program.table(Kinds.POLLEN).forEach(row -> {
            boolean left = row.value().vials().orElse(0) > 0;
            row.value().genotype().filter(any -> left).ifPresent(pollenInStore::add);
        });
        triploidPollen = triploidPollen(rates);
        decidedMusts = decidedMusts(genes.goals());
    }

    /**
     * Judges a pair.
     *
     * @param inbreeding of the seedlings; empty without a pedigree module
     * @param inbreedingOfParents mean of the two
     */
    Draft of(
            Code<Genotype> seed,
            Code<Genotype> pollen,
            Compatibility match,
            Optional<Double> inbreeding,
            double inbreedingOfParents) {
        SeedlingShares shares = genes.shares(seed, pollen);
        int told = told(seed, pollen);
        List<CrossQuantity> promised = promised(seed, pollen, told & decidedMusts, inbreedingOfParents);
        Optional<Interval> gap = bloom.gapDays(seed, pollen);
        Map<String, Double> factors = new LinkedHashMap<>();
        factors.put("musts", musts(shares, told, promised));
        inbreeding.ifPresent(f -> factors.put("vigour", Math.max(0, 1 - LOSS_OF_VIGOUR * f)));
        factors.put("pollen", pollen(match));
        factors.put("ploidy", ploidy(seed, pollen));
        gap.ifPresent(days -> factors.put("bloom", bloom(days, pollen)));
        factors.put("wishes", wishes(shares, seed, pollen) * Math.exp(lead(promised)));
        return new Draft(seed, pollen, match, shares, told & decidedMusts, promised, inbreeding, gap, factors);
    }

    private double musts(SeedlingShares shares, int told, List<CrossQuantity> promised) {
        double product = shares.ofAll(decidedMusts & told);
        int open = decidedMusts & ~told;
        for (CrossQuantity quantity : promised) {
            product *= quantity.share().orElse(1);
            if (quantity.share().isPresent()) {
                open &= ~bit(quantity.goal());
            }
        }
        return product * Math.pow(NOTHING_TOLD, Integer.bitCount(open));
    }

    /** What records promise, but for musts that genes tell already. */
    private List<CrossQuantity> promised(
            Code<Genotype> seed, Code<Genotype> pollen, int toldMusts, double inbreedingOfParents) {
        return quantities.of(seed, pollen, inbreedingOfParents).stream()
                .filter(quantity -> (bit(quantity.goal()) & toldMusts) == 0)
                .toList();
    }

    private int bit(Goal goal) {
        for (int i = 0; i < genes.goals().size(); i++) {
            if (genes.goals().get(i).goal().equals(goal) && genes.goals().get(i).decides()) {
                return 1 << i;
            }
        }
        return 0;
    }

    /** Weighted mean lead in the wishes. */
    private static double lead(List<CrossQuantity> promised) {
        double sum = 0;
        double weights = 0;
        for (CrossQuantity quantity : promised) {
            if (quantity.share().isEmpty()) {
                double weight = quantity.goal().weight().orElse(1);
                sum += weight * quantity.lead();
                weights += weight;
            }
        }
        return weights == 0 ? 0 : sum / weights;
    }

    /** Goals of which something is on file in one of the parents, as bits. */
    private int told(Code<Genotype> seed, Code<Genotype> pollen) {
        int told = 0;
        for (int goal = 0; goal < genes.goals().size(); goal++) {
            told |= genes.told(goal, seed, pollen) ? 1 << goal : 0;
        }
        return told;
    }

    private double wishes(SeedlingShares shares, Code<Genotype> seed, Code<Genotype> pollen) {
        double product = 1;
        for (int goal = 0; goal < genes.goals().size(); goal++) {
            boolean must = (decidedMusts >> goal & 1) == 1;
            if (!must && genes.told(goal, seed, pollen)) {
                product *= (1 + shares.of(goal)) / 2;
            }
        }
        return product;
    }

    private static double pollen(Compatibility match) {
        if (match.fertility() != Fertility.UNKNOWN) {
            return match.fertility() == Fertility.NONE ? 0 : 1;
        }
        double none = match.probability(Fertility.NONE);
        return Double.isNaN(none) ? match.possible().contains(Fertility.NONE) ? 0.5 : 1 : 1 - none;
    }

    private double ploidy(Code<Genotype> seed, Code<Genotype> pollen) {
        return (genes.ploidy(seed) == 3 ? TRIPLOID_SEED_PARENT : 1) * (genes.ploidy(pollen) == 3 ? triploidPollen : 1);
    }

    private double bloom(Interval days, Code<Genotype> pollen) {
        if (days.middle() <= 0 || pollenInStore.contains(pollen)) {
            return 1;
        }
        return Math.max(0.5, 1 - LOST_PER_DAY * days.middle());
    }

    private static double triploidPollen(RateBook rates) {
        Optional<BetaBelief> usual = rates.belief(Step.SET, "");
        return usual.isPresent()
                ? rates.triploidSet()
                        .map(set -> Math.min(1, set.mean() / usual.get().mean()))
                        .orElse(0.1)
                : 0.1;
    }

    private static int decidedMusts(List<GeneticGoal> goals) {
        int bits = 0;
        for (int goal = 0; goal < goals.size(); goal++) {
            boolean must = goals.get(goal).goal().kind().equals(Optional.of(GoalKind.MUST));
            bits |= must && goals.get(goal).decides() ? 1 << goal : 0;
        }
        return bits;
    }
}
