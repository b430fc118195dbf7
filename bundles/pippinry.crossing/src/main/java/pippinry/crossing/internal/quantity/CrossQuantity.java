package pippinry.crossing.internal.quantity;

import java.util.Optional;
import java.util.OptionalDouble;
import pippinry.model.record.Direction;
import pippinry.model.record.Goal;
import pippinry.statistics.selection.FamilyOutlook;

/**
 * What a cross promises in the trait of a goal.
 *
 * @param share of the seedlings that reach the threshold of a must; empty for a wish
 * @param lead of the family's mean over the mean of all, in standard deviations towards what the goal wants
 * @param spread within the family in the same unit
 * @param told false when neither parent nor theirs has a record, and the mean of all stands in
 */
public record CrossQuantity(
        Goal goal, FamilyOutlook outlook, OptionalDouble share, double lead, double spread, boolean told) {

    /** Share that would reach the threshold if the family's mean lay this many of its deviations from the prediction. */
    public double shareIfMeanIs(double deviations) {
        double mean = outlook.mean() + deviations * outlook.doubt();
        double above = new FamilyOutlook(mean, 0, outlook.spread())
                .shareAbove(goal.threshold().orElseThrow());
        return goal.direction().equals(Optional.of(Direction.MORE)) ? above : 1 - above;
    }
}
