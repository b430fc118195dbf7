package pippinry.crossing.internal.allocate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pippinry.crossing.internal.rank.RankedPair;

/**
 * The plan for a program: the allocation with the flowers that its numbers really need.
 *
 * @param crosses largest family first
 * @param plan as the solver gave it
 * @param second the best plan that makes other crosses; empty if there is none
 */
public record PlanOfCrosses(List<Planned> crosses, Allocation plan, Optional<Allocation> second) {

    private static final int MOST_ROUNDS = 5;

    /** One cross of the plan. */
    public record Planned(RankedPair pair, int seedlings, int flowers) {}

    public PlanOfCrosses {
        crosses = List.copyOf(crosses);
    }

    /**
     * Plans. Flowers go up a little faster than seedlings in small families, so the plan is made again with more flowers for
     * each seedling until its true flowers keep the limit.
     */
    public static Optional<PlanOfCrosses> of(List<RankedPair> pairs, OptionsOfProgram options, Limits limits) {
        Map<String, RankedPair> byParents = new HashMap<>();
        pairs.forEach(pair ->
                byParents.put(key(pair.seedParent().text(), pair.pollenParent().text()), pair));
        double more = 1;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            Allocator allocator = new Allocator(options.of(pairs, more), limits);
            List<Allocation> plans = allocator.plans();
            if (plans.isEmpty()) {
                return Optional.empty();
            }
            List<Planned> crosses = planned(plans.get(0), byParents, options);
            int flowers = crosses.stream().mapToInt(Planned::flowers).sum();
            if (flowers <= limits.flowers()) {
                return Optional.of(new PlanOfCrosses(
                        crosses, plans.get(0), plans.stream().skip(1).findFirst()));
            }
            more *= Math.max(1.02, (double) flowers / limits.flowers());
        }
        return Optional.empty();
    }

    public int flowers() {
        return crosses.stream().mapToInt(Planned::flowers).sum();
    }

    /** What the second-best choice of crosses would lose, as a share of this plan's worth. */
    public double lossOfSecond() {
        return second.map(other -> 1 - other.worth() / plan.worth()).orElse(Double.NaN);
    }

    private static List<Planned> planned(Allocation plan, Map<String, RankedPair> byParents, OptionsOfProgram options) {
        List<Planned> crosses = new ArrayList<>();
        for (Allocation.Part part : plan.shares()) {
            RankedPair pair = byParents.get(key(
                    part.cross().seedParent().text(),
                    part.cross().pollenParent().text()));
            int flowers = options.flowers(pair, part.seedlings()).orElse(Integer.MAX_VALUE / 1000);
            crosses.add(new Planned(pair, part.seedlings(), flowers));
        }
        return crosses;
    }

    private static String key(String seed, String pollen) {
        return seed + "\n" + pollen;
    }
}
