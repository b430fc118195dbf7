package pippinry.crossing.internal.quantity;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import pippinry.model.Program;
import pippinry.model.record.Direction;
import pippinry.model.record.Genotype;
import pippinry.model.record.Goal;
import pippinry.model.record.GoalKind;
import pippinry.model.record.Kinds;
import pippinry.model.value.Code;
import pippinry.statistics.selection.FamilyOutlook;
import pippinry.traits.CropPack;

/** What crosses promise in the traits of a program's goals, by the records of the parents and of earlier families. */
public final class QuantityBook {

    private static final String FRUIT_WEIGHT = "fruit.weight_g";

    private final Map<Goal, TraitModel> models = new LinkedHashMap<>();
    private final List<String> silent = new ArrayList<>();

    public QuantityBook(Program program, Optional<CropPack> pack) {
        program.table(Kinds.GOALS).forEach(row -> {
            Goal goal = row.value();
            Optional<TraitModel> model = TraitModel.of(program, goal.trait(), publishedShift(goal.trait(), pack));
            if (model.isPresent() && goal.direction().isPresent()) {
                models.put(goal, model.get());
            } else {
                silent.add(goal.trait());
            }
        });
    }

    /** Goals of which too little was scored to foretell anything. */
    public List<String> silent() {
        return List.copyOf(silent);
    }

    /** The model of a goal's trait. */
    public Optional<TraitModel> model(Goal goal) {
        return Optional.ofNullable(models.get(goal));
    }

    /** What a cross promises in every goal whose trait is scored; parents without records count as the mean of all. */
    public List<CrossQuantity> of(Code<Genotype> seed, Code<Genotype> pollen, double inbreedingOfParents) {
        List<CrossQuantity> promised = new ArrayList<>();
        models.forEach((goal, model) -> {
            FamilyOutlook outlook = model.outlook(seed, pollen, inbreedingOfParents);
            promised.add(new CrossQuantity(
                    goal,
                    outlook,
                    share(goal, outlook),
                    lead(goal, model, outlook.mean()),
                    spread(model, outlook),
                    model.told(seed) || model.told(pollen)));
        });
        return promised;
    }

    private static OptionalDouble share(Goal goal, FamilyOutlook outlook) {
        boolean must = goal.kind().equals(Optional.of(GoalKind.MUST))
                && goal.threshold().isPresent();
        Direction direction = goal.direction().orElseThrow();
        if (!must || direction == Direction.NEAR) {
            return OptionalDouble.empty();
        }
        double above = outlook.shareAbove(goal.threshold().getAsDouble());
        return OptionalDouble.of(direction == Direction.MORE ? above : 1 - above);
    }

    /** Deviations from the mean towards what is wanted; for a target how much nearer the family lies than the mean of all. */
    private static double lead(Goal goal, TraitModel model, double value) {
        return switch (goal.direction().orElseThrow()) {
            case MORE -> (value - model.mean()) / model.deviation();
            case LESS -> (model.mean() - value) / model.deviation();
            case NEAR -> {
                double target = goal.threshold().orElse(model.mean());
                yield (Math.abs(model.mean() - target) - Math.abs(value - target)) / model.deviation();
            }
        };
    }

    private static double spread(TraitModel model, FamilyOutlook outlook) {
        return outlook.spread() / model.deviation();
    }

    private static double publishedShift(String trait, Optional<CropPack> pack) {
        return trait.equals(FRUIT_WEIGHT)
                ? -pack.flatMap(facts -> facts.rate("fruit_size_below_midparent"))
                        .map(rate -> rate.typical())
                        .orElse(0.0)
                : 0;
    }
}
