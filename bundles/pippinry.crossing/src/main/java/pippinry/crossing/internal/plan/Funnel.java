package pippinry.crossing.internal.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pippinry.model.Program;
import pippinry.model.ask.HouseRate;
import pippinry.model.ask.HouseRates;
import pippinry.model.ask.HouseRates.Step;
import pippinry.model.record.Genotype;
import pippinry.model.value.Code;

/**
 * What so many flowers should come to, step by step, by the house rates.
 *
 * @param stages from flowers to plants in the field
 * @param grounds a line for each rate: its value with its interval, and where it comes from
 */
public record Funnel(List<Stage> stages, List<String> grounds) {

    /**
     * One stage of the way.
     *
     * @param name what is counted
     * @param count expected, the mean of the rates multiplied
     */
    public record Stage(String name, double count) {}

    private static final double LOST = 0;

    /**
     * @param flowers pollinated
     * @param share of the seedlings with every must that loci decide; empty where no locus does
     */
    public static Funnel of(
            Program program, HouseRates rates, Code<Genotype> seedParent, int flowers, Optional<Double> share) {
        List<Stage> stages = new ArrayList<>(List.of(new Stage("flowers", flowers)));
        List<String> grounds = new ArrayList<>();
        double count = flowers;
        for (Step step : List.of(Step.SET, Step.SEEDS_PER_FRUIT, Step.EMERGENCE, Step.POTTING, Step.FIELD)) {
            HouseRate rate = rates.rate(program, step, Optional.of(seedParent));
            count *= rate.value().middle();
            stages.add(new Stage(name(step), count));
            grounds.add(ground(step, rate));
        }
        double last = count;
        share.filter(known -> known > LOST).ifPresent(known -> stages.add(new Stage("every must", last * known)));
        return new Funnel(List.copyOf(stages), List.copyOf(grounds));
    }

    private static String name(Step step) {
        return switch (step) {
            case SET -> "fruit";
            case SEEDS_PER_FRUIT -> "seeds";
            case EMERGENCE -> "up";
            case POTTING -> "potted";
            case TAKE -> "taken";
            case FIELD -> "in the field";
        };
    }

    private static String ground(Step step, HouseRate rate) {
        String what =
                step == Step.SEEDS_PER_FRUIT ? "seeds a fruit" : step.name().toLowerCase(Locale.ROOT);
        return String.format(
                Locale.ROOT,
                "%s %.2f (%.2f to %.2f in %.0f %% of cases): %s",
                what,
                rate.value().middle(),
                rate.value().low(),
                rate.value().high(),
                rate.value().certainty() * 100,
                rate.basis());
    }
}
