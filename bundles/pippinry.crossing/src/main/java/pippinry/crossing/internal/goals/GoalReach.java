package pippinry.crossing.internal.goals;

import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import pippinry.model.Program;
import pippinry.model.record.Direction;
import pippinry.model.record.Goal;
import pippinry.model.record.Kinds;

/**
 * Who on file comes closest to a goal, by the plain mean of its scores over years and scorers; years are not taken out here,
 * so it tells what was seen, not what is inherited.
 *
 * @param genotype the closest one
 * @param mean of its scores
 * @param scores how many it rests on
 * @param reached whether that mean is what the goal asks
 * @param reaching how many genotypes reach it
 */
public record GoalReach(String genotype, double mean, int scores, boolean reached, long reaching) {

    private record Sum(double total, int count) {
        Sum and(double value) {
            return new Sum(total + value, count + 1);
        }

        double mean() {
            return total / count;
        }
    }

    /** Empty when nobody was scored for the trait yet. */
    public static Optional<GoalReach> of(Program program, Goal goal) {
        Map<String, Sum> sums = new HashMap<>();
        program.table(Kinds.SCORES).forEach(row -> {
            OptionalDouble value = row.value().value().number();
            if (row.value().trait().equals(goal.trait()) && value.isPresent()) {
                String genotype = genotype(program, row.value().subject().text());
                sums.merge(genotype, new Sum(value.getAsDouble(), 1), (known, fresh) -> known.and(value.getAsDouble()));
            }
        });
        long reaching = sums.values().stream()
                .filter(sum -> distance(goal, sum.mean()) <= 0)
                .count();
        return sums.entrySet().stream()
                .min(Comparator.comparingDouble((Map.Entry<String, Sum> some) ->
                                distance(goal, some.getValue().mean()))
                        .thenComparing(Map.Entry::getKey))
                .map(best -> new GoalReach(
                        best.getKey(),
                        best.getValue().mean(),
                        best.getValue().count(),
                        distance(goal, best.getValue().mean()) <= 0,
                        reaching));
    }

    /** How far a value is from what the goal asks; 0 or less when it is reached. A goal without threshold is never reached. */
    private static double distance(Goal goal, double value) {
        Direction direction = goal.direction().orElse(Direction.MORE);
        if (goal.threshold().isEmpty()) {
            return direction == Direction.LESS ? value + 1e9 : 1e9 - value;
        }
        double threshold = goal.threshold().getAsDouble();
        return switch (direction) {
            case LESS -> value - threshold;
            case MORE -> threshold - value;
            case NEAR -> Math.abs(value - threshold);
        };
    }

    /** The genotype of a plant; other subjects stand for themselves. */
    private static String genotype(Program program, String subject) {
        return program.table(Kinds.PLANTS)
                .find(subject)
                .flatMap(row -> row.value().genotype())
                .map(Object::toString)
                .orElse(subject);
    }
}
