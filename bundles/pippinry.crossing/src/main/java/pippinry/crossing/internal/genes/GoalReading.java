package pippinry.crossing.internal.genes;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import pippinry.model.record.Direction;
import pippinry.model.record.Goal;
import pippinry.traits.CropPack;
import pippinry.traits.Locus;
import pippinry.traits.LocusEffect;
import pippinry.traits.TraitDefinition;

/** Finds which loci of the crop pack speak to the goals of a program. */
public final class GoalReading {

    private final List<GeneticGoal> goals = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    public GoalReading(List<Goal> wanted, Optional<CropPack> pack) {
        for (Goal goal : wanted) {
            pack.ifPresent(facts -> read(goal, facts));
        }
    }

    /** Goals that loci decide or help, in the order in which they were set. */
    public List<GeneticGoal> goals() {
        return List.copyOf(goals);
    }

    /** What cannot be read of the goals. */
    public List<String> notes() {
        return List.copyOf(notes);
    }

    private void read(Goal goal, CropPack pack) {
        Map<Boolean, List<Need>> needs = new TreeMap<>();
        for (LocusEffect effect : pack.effects()) {
            Optional<Locus> locus = pack.locus(effect.locus());
            if (effect.trait().equals(goal.trait()) && locus.isPresent()) {
                wanted(goal, effect, locus.get())
                        .ifPresent(need -> needs.computeIfAbsent(effect.decides(), any -> new ArrayList<>())
                                .add(need));
            }
        }
        needs.forEach((decides, some) -> goals.add(new GeneticGoal(goal, some, decides)));
    }

    /** What the goal wants of the locus; empty when the effect's values do not tell. */
    private Optional<Need> wanted(Goal goal, LocusEffect effect, Locus locus) {
        if (!effect.decides()) {
            return Optional.of(new Need(locus, true));
        }
        boolean shown = reaches(goal, effect.shownLow(), effect.shownHigh());
        boolean otherwise = reaches(goal, effect.otherwiseLow(), effect.otherwiseHigh());
        if (goal.threshold().isEmpty()) {
            return better(goal, effect).map(up -> new Need(locus, up));
        }
        return shown == otherwise ? Optional.empty() : Optional.of(new Need(locus, shown));
    }

    /** Whether all values of the range are what the goal asks for. */
    private static boolean reaches(Goal goal, OptionalDouble low, OptionalDouble high) {
        if (low.isEmpty()
                || high.isEmpty()
                || goal.threshold().isEmpty()
                || goal.direction().isEmpty()) {
            return false;
        }
        double threshold = goal.threshold().getAsDouble();
        return switch (goal.direction().get()) {
            case LESS -> high.getAsDouble() <= threshold;
            case MORE -> low.getAsDouble() >= threshold;
            case NEAR -> low.getAsDouble() <= threshold && threshold <= high.getAsDouble();
        };
    }

    /** Whether plants that show the effect have more of what a goal without threshold wants. */
    private static Optional<Boolean> better(Goal goal, LocusEffect effect) {
        if (effect.shownLow().isEmpty()
                || effect.otherwiseLow().isEmpty()
                || goal.direction().isEmpty()) {
            return Optional.empty();
        }
        boolean more = effect.shownLow().getAsDouble() > effect.otherwiseLow().getAsDouble();
        return switch (goal.direction().get()) {
            case MORE -> Optional.of(more);
            case LESS -> Optional.of(!more);
            case NEAR -> Optional.empty();
        };
    }

    /** The goal in a few words, such as {@code Scab on leaves at most 2}; a trait of no pack goes by its code. */
    public static String words(Goal goal, Optional<CropPack> pack) {
        Optional<TraitDefinition> trait = pack.flatMap(facts -> facts.trait(goal.trait()));
        String unit = trait.map(TraitDefinition::unit)
                .filter(some -> !some.isBlank())
                .map(some -> " " + some)
                .orElse("");
        String amount =
                goal.threshold().isPresent() ? " " + number(goal.threshold().getAsDouble()) + unit : "";
        Direction direction = goal.direction().orElse(Direction.MORE);
        return trait.map(TraitDefinition::name).orElse(goal.trait())
                + switch (direction) {
                    case LESS -> goal.threshold().isPresent() ? " at most" + amount : " less";
                    case MORE -> goal.threshold().isPresent() ? " at least" + amount : " more";
                    case NEAR -> " near" + amount;
                };
    }

    private static String number(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    }
}
