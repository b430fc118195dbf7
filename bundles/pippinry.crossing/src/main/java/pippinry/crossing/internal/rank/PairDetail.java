package pippinry.crossing.internal.rank;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
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

/** Completes the pairs that are shown: shares with their doubt, seedlings, flowers, and the reasons in words. */
final class PairDetail {

    private static final int MOST_CASES = 400;
    private static final int MOST_SEEDLINGS = 100_000;

    private final GeneBook genes;
    private final RateBook rates;
    private final Wishes wishes;
    private final PairReasons reasons;
    private final Map<String, Optional<Flowers>> flowers = new HashMap<>();

    PairDetail(Program program, GeneBook genes, RateBook rates, Wishes wishes) {
        this.genes = genes;
        this.rates = rates;
        this.wishes = wishes;
        this.reasons = new PairReasons(program, genes, rates, wishes);
    }

    RankedPair complete(Draft draft, int rank) {
        Map<SeedlingShares, Double> cases = genes.cases(draft.seedParent(), draft.pollenParent(), MOST_CASES);
        List<GoalShare> goals = goals(draft, cases);
        Optional<Share> share =
                draft.toldMusts() == 0 ? Optional.empty() : Optional.of(mixed(cases, draft.toldMusts()));
        OptionalLong seedlings = share.map(some -> TrialsNeeded.atLeast(wishes.atLeast(), some, wishes.sure()))
                .orElse(OptionalLong.empty());
        int raised = raised(share, seedlings);
        Optional<Flowers> needed = flowers(draft, raised);
        RankedPair pair = new RankedPair(
                draft.seedParent(),
                draft.pollenParent(),
                draft.match(),
                share.map(some -> OptionalDouble.of(some.mean())).orElse(OptionalDouble.empty()),
                goals,
                draft.inbreeding().map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                draft.bloomGap(),
                seedlings,
                needed,
                draft.worth(),
                draft.factors(),
                rank,
                List.of());
        return reasons.add(pair, raised);
    }

    /** The pair as far as judging it has told. */
    static RankedPair glance(Draft draft, int rank) {
        return new RankedPair(
                draft.seedParent(),
                draft.pollenParent(),
                draft.match(),
                draft.toldMusts() == 0
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(draft.shares().ofAll(draft.toldMusts())),
                List.of(),
                draft.inbreeding().map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                draft.bloomGap(),
                OptionalLong.empty(),
                Optional.empty(),
                draft.worth(),
                draft.factors(),
                rank,
                List.of());
    }

    /** Seedlings to plan for: those that the share asks for, else a family; nothing when the share is hopeless. */
    private int raised(Optional<Share> share, OptionalLong seedlings) {
        if (share.isEmpty()) {
            return wishes.family();
        }
        return seedlings.isPresent() && seedlings.getAsLong() <= MOST_SEEDLINGS ? (int) seedlings.getAsLong() : 0;
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
                GoalReading.words(goal.goal()),
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

    private static Share mixed(Map<SeedlingShares, Double> cases, int musts) {
        if (cases.size() == 1) {
            return new KnownShare(cases.keySet().iterator().next().ofAll(musts));
        }
        double total = cases.values().stream().mapToDouble(chance -> chance).sum();
        return new MixedShare(cases.entrySet().stream()
                .map(some -> new MixedShare.Case(
                        some.getValue() / total, new KnownShare(some.getKey().ofAll(musts))))
                .toList());
    }

    private Optional<Flowers> flowers(Draft draft, int seedlings) {
        if (!rates.complete() || seedlings == 0) {
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
