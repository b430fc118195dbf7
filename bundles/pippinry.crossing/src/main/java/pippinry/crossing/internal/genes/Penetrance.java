package pippinry.crossing.internal.genes;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import pippinry.model.record.Genotype;
import pippinry.model.value.Code;
import pippinry.traits.CropPack;
import pippinry.traits.Locus;
import pippinry.traits.LocusEffect;

/**
 * What scored traits say about a locus that decides them, as the likelihood of the scores for plants that show the effect and
 * for plants that do not.
 *
 * <p>A plant that shows the effect is scored outside its range with probability {@value #WRONG} (wrong reading, other race). For
 * a plant that does not: {@value #WRONG} to be scored inside, if the pack gives its own range; else the share of all scored
 * kinds that lie inside, since without the gene a plant may be clean by other genes or by escape. A kind counts as inside only
 * if all its scores do (worst rating of all years: Plant Protection Science 2015, 699 seedlings).
 */
final class Penetrance {

    private static final double WRONG = 0.05;
    private static final double LEAST = 0.05;

    private final Map<Code<Genotype>, double[]> likelihood = new HashMap<>();

    Penetrance(Locus locus, CropPack pack, Phenotypes phenotypes) {
        for (LocusEffect effect : pack.effects()) {
            boolean told = effect.shownLow().isPresent() && effect.shownHigh().isPresent();
            if (effect.locus().equals(locus.name()) && effect.decides() && told) {
                add(effect, phenotypes.of(effect.trait()));
            }
        }
    }

    /** Likelihood without and with the effect shown; both 1 where nothing was scored. */
    double[] of(Code<Genotype> genotype) {
        return likelihood.getOrDefault(genotype, new double[] {1, 1});
    }

    boolean scored(Code<Genotype> genotype) {
        return likelihood.containsKey(genotype);
    }

    private void add(LocusEffect effect, Map<Code<Genotype>, List<Double>> scores) {
        List<Code<Genotype>> inside = new ArrayList<>();
        List<Code<Genotype>> outside = new ArrayList<>();
        scores.forEach((genotype, values) -> {
            if (values.stream().allMatch(value -> within(value, effect.shownLow(), effect.shownHigh()))) {
                inside.add(genotype);
            } else if (effect.otherwiseLow().isEmpty() || values.stream().anyMatch(value -> otherwise(value, effect))) {
                outside.add(genotype);
            }
        });
        double chance = effect.otherwiseLow().isPresent()
                ? WRONG
                : Math.min(1 - LEAST, Math.max(LEAST, (double) inside.size() / scores.size()));
        // Two traits of one locus, such as scab of leaf and fruit, are not independent: the stronger word counts.
        inside.forEach(genotype -> say(genotype, chance, 1 - WRONG));
        outside.forEach(genotype -> say(genotype, 1 - chance, WRONG));
    }

    private void say(Code<Genotype> genotype, double without, double with) {
        double[] before = likelihood.get(genotype);
        if (before == null || strength(without, with) > strength(before[0], before[1])) {
            likelihood.put(genotype, new double[] {without, with});
        }
    }

    private static double strength(double without, double with) {
        return Math.abs(Math.log(with / without));
    }

    private static boolean within(double value, OptionalDouble low, OptionalDouble high) {
        return value >= low.getAsDouble() && value <= high.getAsDouble();
    }

    private static boolean otherwise(double value, LocusEffect effect) {
        return within(value, effect.otherwiseLow(), effect.otherwiseHigh());
    }
}
