package pippinry.crossing.internal.rank;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.TreeMap;
import java.util.stream.Collectors;
import pippinry.crossing.internal.genes.GeneBook;
import pippinry.crossing.internal.genes.GeneticGoal;
import pippinry.crossing.internal.genes.GoalReading;
import pippinry.crossing.internal.genes.Need;
import pippinry.crossing.internal.genes.SeedlingShares;
import pippinry.crossing.internal.rates.RateBook;
import pippinry.model.Program;
import pippinry.model.record.Genotype;
import pippinry.model.record.GoalKind;
import pippinry.model.value.Code;
import pippinry.statistics.proportions.BetaBelief;
import pippinry.statistics.proportions.Cascade;
import pippinry.statistics.proportions.KnownShare;
import pippinry.statistics.proportions.MixedShare;
import pippinry.statistics.proportions.Share;
import pippinry.statistics.proportions.TrialsNeeded;
import pippinry.traits.CropPack;

/** Completes the pairs that are shown: shares with their doubt, seedlings, flowers, and the reasons in words. */
final class PairDetail {

    private static final int MOST_CASES = 400;
    private static final int MOST_SEEDLINGS = 5_000;

    private final GeneBook genes;
    private final RateBook rates;
    private final Wishes wishes;
    private final PairReasons reasons;
    private final Optional<CropPack> pack;
    private final Optional<BeatingTheCheck> beating;
    private final Map<String, Optional<Flowers>> flowers = new HashMap<>();

    PairDetail(Program program, GeneBook genes, RateBook rates, Wishes wishes, Optional<CropPack> pack) {
        this.genes = genes;
        this.rates = rates;
        this.wishes = wishes;
        this.pack = pack;
        this.beating = wishes.beat().map(beat -> new BeatingTheCheck(program, beat));
        this.reasons = new PairReasons(program, genes, rates, wishes, pack);
    }

    RankedPair complete(Draft draft, int rank) {
        Map<SeedlingShares, Double> cases = genes.cases(draft.seedParent(), draft.pollenParent(), MOST_CASES);
        Optional<Share> share = draft.told() ? Optional.of(mixed(cases, draft)) : Optional.empty();
        OptionalLong seedlings = share.map(this::needed).orElse(OptionalLong.empty());
        int planned = seedlings.isPresent() ? (int) seedlings.getAsLong() : wishes.family();
        RankedPair pair = new RankedPair(
                draft.seedParent(),
                draft.pollenParent(),
                draft.match(),
                share.map(some -> OptionalDouble.of(some.mean())).orElse(OptionalDouble.empty()),
                goals(draft, cases),
                draft.quantities(),
                draft.inbreeding().map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                draft.bloomGap(),
                seedlings,
                planned,
                flowers(draft, planned),
                beating.map(check -> check.chance(draft.seedParent(), draft.pollenParent(), planned))
                        .orElse(OptionalDouble.empty()),
                draft.worth(),
                draft.factors(),
                rank,
                List.of());
        return reasons.add(pair);
    }

    /** The pair as far as judging it has told. */
    static RankedPair glance(Draft draft, int rank) {
        return new RankedPair(
                draft.seedParent(),
                draft.pollenParent(),
                draft.match(),
                draft.told()
                        ? OptionalDouble.of(draft.shares().ofAll(draft.toldMusts()) * draft.shareByRecords())
                        : OptionalDouble.empty(),
                List.of(),
                draft.quantities(),
                draft.inbreeding().map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                draft.bloomGap(),
                OptionalLong.empty(),
                0,
                Optional.empty(),
                OptionalDouble.empty(),
                draft.worth(),
                draft.factors(),
                rank,
                List.of());
    }

    /** Seedlings for the wished certainty; empty when numbers alone cannot give it. */
    private OptionalLong needed(Share share) {
        OptionalLong needed = TrialsNeeded.atLeast(wishes.atLeast(), share, wishes.sure());
        return needed.isPresent() && needed.getAsLong() <= MOST_SEEDLINGS ? needed : OptionalLong.empty();
    }

    private List<GoalShare> goals(Draft draft, Map<SeedlingShares, Double> cases) {
        List<GoalShare> shares = new ArrayList<>();
        for (int i = 0; i < genes.goals().size(); i++) {
            if (genes.told(i, draft.seedParent(), draft.pollenParent())) {
                shares.add(goal(i, draft, cases));
            }
        }
        return shares;
    }

    private GoalShare goal(int index, Draft draft, Map<SeedlingShares, Double> cases) {
        GeneticGoal goal = genes.goals().get(index);
        double low = 1;
        double high = 0;
        for (SeedlingShares some : cases.keySet()) {
            low = Math.min(low, some.of(index));
            high = Math.max(high, some.of(index));
        }
        return new GoalShare(
                goal.goal().trait(),
                goal.goal().kind().orElse(GoalKind.WISH),
                GoalReading.words(goal.goal(), pack),
                loci(goal, draft),
                draft.shares().of(index),
                low,
                high,
                goal.decides());
    }

    /** The loci at which something is on file. */
    private String loci(GeneticGoal goal, Draft draft) {
        return goal.needs().stream()
                .map(Need::locus)
                .filter(locus -> told(draft.seedParent(), locus.name()) || told(draft.pollenParent(), locus.name()))
                .map(locus -> locus.name())
                .collect(Collectors.joining(", "));
    }

    private boolean told(Code<Genotype> genotype, String locus) {
        return genes.dosages(genotype).get(locus).told();
    }

    /** The share in every case of the parents' genes and of the doubt about their records. */
    private static Share mixed(Map<SeedlingShares, Double> cases, Draft draft) {
        Map<Double, Double> byShare = new TreeMap<>();
        double total = cases.values().stream().mapToDouble(chance -> chance).sum();
        cases.forEach((some, chance) -> byShare.merge(some.ofAll(draft.toldMusts()), chance / total, Double::sum));
        Map<Double, Double> byRecords = DoubtOfRecords.shares(draft.quantities());
        if (byShare.size() * byRecords.size() == 1) {
            return new KnownShare(byShare.keySet().iterator().next()
                    * byRecords.keySet().iterator().next());
        }
        List<MixedShare.Case> all = new ArrayList<>();
        byShare.forEach((genes, chance) -> byRecords.forEach(
                (records, weight) -> all.add(new MixedShare.Case(chance * weight, new KnownShare(genes * records)))));
        return new MixedShare(all);
    }

    private Optional<Flowers> flowers(Draft draft, int seedlings) {
        if (!rates.complete()) {
            return Optional.empty();
        }
        boolean triploid = genes.ploidy(draft.pollenParent()) == 3;
        String key = draft.seedParent() + "|" + triploid + "|" + seedlings;
        return flowers.computeIfAbsent(key, any -> reckon(draft.seedParent(), triploid, seedlings));
    }

    private Optional<Flowers> reckon(Code<Genotype> seed, boolean triploid, int seedlings) {
        Optional<BetaBelief> set = triploid ? rates.triploidSet() : Optional.empty();
        Cascade funnel = set.isPresent() ? rates.funnel(set, seed.text()) : rates.funnel(seed.text());
        OptionalInt low = funnel.startsNeeded(seedlings, 0.1);
        OptionalInt median = funnel.startsNeeded(seedlings, 0.5);
        OptionalInt high = funnel.startsNeeded(seedlings, 0.9);
        return low.isPresent() && median.isPresent() && high.isPresent()
                ? Optional.of(new Flowers(median.getAsInt(), low.getAsInt(), high.getAsInt()))
                : Optional.empty();
    }
}
