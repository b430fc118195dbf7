package pippinry.crossing.internal.allocate;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import pippinry.model.record.Genotype;
import pippinry.model.value.Code;
import pippinry.statistics.optimise.LinearProgram;

/**
 * What no plan within the limits can exceed, from the prices of places, flowers and parents.
 *
 * <p>It is the dual of the plan's linear program without whole numbers, least families and number of crosses: prices such that no
 * option earns more than it costs. Options are added to that program only when they earn too much at its prices, so it stays small
 * however many crosses there are; what they still earn too much at the end is put on the price of a place, and so the bound
 * holds exactly.
 */
final class DualBound {

    private static final int MOST_ROUNDS = 60;
    private static final int AT_ONCE = 12;
    private static final double ENOUGH = 1e-9;

    private final List<CrossOption> options;
    private final Limits limits;
    private final double[] worths;
    private final List<Code<Genotype>> parents;
    private final double bound;
    private final List<CrossOption> nearest;

    DualBound(List<CrossOption> options, Limits limits, double[] worths) {
        this.options = options;
        this.limits = limits;
        this.worths = worths;
        this.parents = limits.mostOfOneParent() < 1 ? parents(options) : List.of();
        Set<CrossOption> priced = new LinkedHashSet<>(options.subList(0, Math.min(AT_ONCE, options.size())));
        Prices prices = prices(priced);
        for (int round = 0; round < MOST_ROUNDS && add(prices, priced); round++) {
            prices = prices(priced);
        }
        Prices last = prices;
        double excess =
                Math.max(0, options.stream().mapToDouble(last::excess).max().orElse(0));
        bound = last.cost() + excess * limits.places();
        nearest = options.stream()
                .sorted(Comparator.comparingDouble(last::excess).reversed())
                .toList();
    }

    double bound() {
        return bound;
    }

    /** Options by how near they come to earning their price, nearest first: a best plan is made of the first ones. */
    List<CrossOption> nearest() {
        return nearest;
    }

    private boolean add(Prices prices, Set<CrossOption> priced) {
        List<CrossOption> dear = options.stream()
                .filter(option -> !priced.contains(option) && prices.excess(option) > ENOUGH)
                .sorted(Comparator.comparingDouble(prices::excess).reversed())
                .limit(AT_ONCE)
                .toList();
        priced.addAll(dear);
        return !dear.isEmpty();
    }

    private static List<Code<Genotype>> parents(List<CrossOption> options) {
        Set<Code<Genotype>> all = new TreeSet<>();
        options.forEach(option -> {
            all.add(option.seedParent());
            all.add(option.pollenParent());
        });
        return List.copyOf(all);
    }

    /** Cheapest prices at which none of these options earns more than it costs. */
    private Prices prices(Set<CrossOption> priced) {
        LinearProgram program = new LinearProgram();
        int[] weight = new int[worths.length];
        Map<Integer, Double> all = new HashMap<>();
        for (int t = 0; t < worths.length; t++) {
            weight[t] = program.unknown(0, 1, -limits.best() * (worths[t] - WorthOfBest.FLOOR));
            all.put(weight[t], 1.0);
        }
        program.atLeast(all, 1);
        program.atMost(all, 1);
        int place = program.unknown(0, Double.POSITIVE_INFINITY, -limits.places());
        int flower = program.unknown(0, Double.POSITIVE_INFINITY, -limits.flowers());
        Map<Code<Genotype>, Integer> parent = new HashMap<>();
        parents.forEach(code -> parent.put(code, program.unknown(0, Double.POSITIVE_INFINITY, 0)));
        for (CrossOption option : priced) {
            Map<Integer, Double> earns = new HashMap<>();
            for (int t = 0; t < worths.length; t++) {
                earns.put(weight[t], option.above(worths[t]));
            }
            earns.put(place, -1.0);
            earns.put(flower, -option.flowersEach());
            parent.forEach((code, price) -> earns.put(price, limits.mostOfOneParent() - (has(option, code) ? 1 : 0)));
            program.atMost(earns, 0);
        }
        double[] values = program.solve().orElseThrow().values();
        Map<Code<Genotype>, Double> parentPrices = new HashMap<>();
        parent.forEach((code, price) -> parentPrices.put(code, values[price]));
        return new Prices(firsts(values, weight), values[place], values[flower], parentPrices);
    }

    private static double[] firsts(double[] values, int[] numbers) {
        double[] some = new double[numbers.length];
        for (int i = 0; i < some.length; i++) {
            some[i] = values[numbers[i]];
        }
        return some;
    }

    private static boolean has(CrossOption option, Code<Genotype> parent) {
        return option.seedParent().equals(parent) || option.pollenParent().equals(parent);
    }

    private final class Prices {
        private final double[] weight;
        private final double place;
        private final double flower;
        private final Map<Code<Genotype>, Double> parent;
        private final double parentsShared;

        Prices(double[] weight, double place, double flower, Map<Code<Genotype>, Double> parent) {
            this.weight = weight;
            this.place = place;
            this.flower = flower;
            this.parent = parent;
            this.parentsShared = limits.mostOfOneParent()
                    * parent.values().stream().mapToDouble(p -> p).sum();
        }

        double cost() {
            double sum = place * limits.places() + flower * limits.flowers();
            for (int t = 0; t < weight.length; t++) {
                sum += weight[t] * limits.best() * (worths[t] - WorthOfBest.FLOOR);
            }
            return sum;
        }

        /** What a seedling of the option earns above its price. */
        double excess(CrossOption option) {
            double sum = parentsShared - place - flower * option.flowersEach();
            for (int t = 0; t < weight.length; t++) {
                sum += weight[t] == 0 ? 0 : weight[t] * option.above(worths[t]);
            }
            return sum
                    - parent.getOrDefault(option.seedParent(), 0.0)
                    - parent.getOrDefault(option.pollenParent(), 0.0);
        }
    }
}
