package pippinry.crossing.internal.allocate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import pippinry.model.record.Genotype;
import pippinry.model.value.Code;
import pippinry.statistics.optimise.LinearProgram;

/**
 * Chooses crosses and numbers of seedlings so that the expected worth of the best k seedlings is greatest.
 *
 * <p>For any worth t the best k are worth at most k t plus what all seedlings have above t, so the expected worth of the best k
 * is at most k t + sum over crosses of n E(X - t)+, for every t at once. That is linear in the numbers n, and with many
 * seedlings the smallest of these bounds comes near the worth itself. So the numbers are found by a mixed integer program whose gain z
 * is held below the bound at {@value #CUTS} values of t: z, made as large as possible, is a bound that no plan within the limits exceeds,
 * and the plan found is then valued exactly by {@link WorthOfBest}; the difference is the proven gap. (Worked out here from the
 * duality of the sum of the largest; Rockafellar, R. T. & Uryasev, S. 2000. Optimization of conditional value-at-risk. Journal of Risk
 * 2:21-41, use the same form.)
 *
 * <p>Only which crosses are made is a whole number there; numbers of seedlings are rounded down afterwards, and the search stops
 * within a thousandth of the best.
 *
 * <p>All crosses enter the bound ({@link DualBound}); only the {@value #MOST_OPTIONS} that come nearest to earning their price there enter
 * the integer program.
 */
public final class Allocator {

    private static final int MOST_OPTIONS = 24;
    private static final int CUTS = 25;
    private static final double ENOUGH = 0.001;
    private static final int CHOICES = 3;
    private static final double HIGHEST = 5;

    private final List<CrossOption> few;
    private final Limits limits;
    private final double bound;

    /** Options that are too inbred or hopeless are left out. */
    public Allocator(List<CrossOption> all, Limits limits) {
        this.limits = limits;
        List<CrossOption> options = all.stream()
                .filter(option -> option.inbreeding() <= limits.mostInbreeding() + 1e-12 && option.pass() > 0)
                .toList();
        DualBound dual = new DualBound(options, limits, worths());
        this.bound = dual.bound();
        this.few = dual.nearest().stream().limit(MOST_OPTIONS).toList();
    }

    /**
     * Plans that differ in the crosses they make, best first by their exact worth; empty when no cross keeps the limits. The
     * integer program only comes near that worth, so its first few choices are valued exactly and put in order.
     */
    public List<Allocation> plans() {
        List<Allocation> plans = new ArrayList<>();
        for (int i = 0; i < CHOICES && !few.isEmpty(); i++) {
            Model model = new Model(few);
            plans.forEach(model::forbid);
            List<Allocation.Part> parts = model.program
                    .solve(ENOUGH)
                    .map(solution -> model.parts(solution.values()))
                    .orElse(List.of());
            if (parts.isEmpty()) {
                break;
            }
            plans.add(new Allocation(parts, WorthOfBest.of(parts, limits.best()), bound));
        }
        plans.sort(Comparator.comparingDouble(Allocation::worth).reversed());
        return plans;
    }

    private double[] worths() {
        double[] worths = new double[CUTS];
        for (int i = 0; i < CUTS; i++) {
            worths[i] = WorthOfBest.FLOOR + (HIGHEST - WorthOfBest.FLOOR) * i / (CUTS - 1);
        }
        return worths;
    }

    private final class Model {
        private final LinearProgram program = new LinearProgram();
        private final List<CrossOption> crosses;
        private final int[] seedlings;
        private final int[] made;

        Model(List<CrossOption> crosses) {
            this.crosses = crosses;
            this.seedlings = new int[crosses.size()];
            this.made = new int[crosses.size()];
            int gain = program.unknown(0, Double.POSITIVE_INFINITY, 1);
            for (int i = 0; i < crosses.size(); i++) {
                seedlings[i] = program.unknown(0, most(crosses.get(i)), 0);
            }
            for (double worth : worths()) {
                bound(gain, worth);
            }
            program.atMost(sum(option -> 1.0), limits.places());
            program.atMost(sum(CrossOption::flowersEach), limits.flowers());
            parents();
            families();
        }

        /** Gain no more than the bound at this worth. */
        private void bound(int gain, double worth) {
            Map<Integer, Double> factors = sum(option -> -option.above(worth));
            factors.put(gain, 1.0);
            program.atMost(factors, limits.best() * (worth - WorthOfBest.FLOOR));
        }

        /** Most seedlings that places and flowers allow of one cross. */
        private double most(CrossOption cross) {
            return Math.min(limits.places(), Math.floor(limits.flowers() / cross.flowersEach()));
        }

        private void parents() {
            if (limits.mostOfOneParent() >= 1) {
                return;
            }
            Map<Code<Genotype>, Map<Integer, Double>> byParent = new HashMap<>();
            for (int i = 0; i < crosses.size(); i++) {
                int n = seedlings[i];
                for (Code<Genotype> parent :
                        Set.of(crosses.get(i).seedParent(), crosses.get(i).pollenParent())) {
                    byParent.computeIfAbsent(parent, any -> sum(option -> -limits.mostOfOneParent()))
                            .merge(n, 1.0, Double::sum);
                }
            }
            byParent.values().forEach(factors -> program.atMost(factors, 0));
        }

        private void families() {
            Map<Integer, Double> number = new LinkedHashMap<>();
            for (int i = 0; i < crosses.size(); i++) {
                made[i] = program.whole(0, 1, 0);
                number.put(made[i], 1.0);
                program.atMost(Map.of(seedlings[i], 1.0, made[i], -most(crosses.get(i))), 0);
                program.atLeast(Map.of(seedlings[i], 1.0, made[i], -(double) limits.leastFamily()), 0);
            }
            program.atMost(number, limits.crosses());
        }

        /** Not just these crosses: one of them less or another more. */
        void forbid(Allocation plan) {
            Set<CrossOption> used = new HashSet<>();
            plan.shares().forEach(part -> used.add(part.cross()));
            Map<Integer, Double> factors = new HashMap<>();
            for (int i = 0; i < crosses.size(); i++) {
                factors.put(made[i], used.contains(crosses.get(i)) ? -1.0 : 1.0);
            }
            program.atLeast(factors, 1 - used.size());
        }

        List<Allocation.Part> parts(double[] values) {
            List<Allocation.Part> parts = new ArrayList<>();
            for (int i = 0; i < crosses.size(); i++) {
                // Rounded down, so that no limit is broken; a least family is whole already.
                int n = (int) Math.floor(values[seedlings[i]] + 1e-6);
                if (n > 0) {
                    parts.add(new Allocation.Part(crosses.get(i), n));
                }
            }
            parts.sort(Comparator.comparingInt(Allocation.Part::seedlings).reversed());
            return parts;
        }

        private Map<Integer, Double> sum(ToDoubleFunction<CrossOption> factor) {
            Map<Integer, Double> factors = new LinkedHashMap<>();
            for (int i = 0; i < crosses.size(); i++) {
                factors.put(seedlings[i], factor.applyAsDouble(crosses.get(i)));
            }
            return factors;
        }
    }
}
