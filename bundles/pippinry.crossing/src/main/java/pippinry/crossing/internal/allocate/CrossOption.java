package pippinry.crossing.internal.allocate;

import pippinry.model.record.Genotype;
import pippinry.model.value.Code;
import pippinry.statistics.selection.FamilyOutlook;

/**
 * A cross that might be made, as the plan sees it.
 *
 * @param pass share of the seedlings that reach every must and thrive
 * @param mean expected worth of a seedling that passes, in standard deviations about the mean of all parents
 * @param doubt standard deviation of that mean about its prediction; all seedlings of the cross share it
 * @param spread standard deviation within the family, above 0
 * @param flowersEach flowers to work for one seedling
 * @param inbreeding of the seedlings
 */
public record CrossOption(
        Code<Genotype> seedParent,
        Code<Genotype> pollenParent,
        double pass,
        double mean,
        double doubt,
        double spread,
        double flowersEach,
        double inbreeding) {

    public CrossOption {
        if (!(pass >= 0 && pass <= 1 && spread > 0 && doubt >= 0 && flowersEach > 0)) {
            throw new IllegalArgumentException(
                    "A share, a spread above 0 and flowers above 0: " + pass + ", " + spread + ", " + flowersEach);
        }
    }

    /** Expected amount by which one seedling raised lies above a worth; nothing if it lies below or does not pass. */
    public double above(double worth) {
        double deviation = Math.hypot(spread, doubt);
        double z = (worth - mean) / deviation;
        double density = Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
        return pass * deviation * (density - z * upper(z));
    }

    /** Probability that a seedling raised passes and lies above a worth, given how far the family's mean is off. */
    double chanceAbove(double worth, double doubts) {
        return pass * upper((worth - mean - doubts * doubt) / spread);
    }

    private static double upper(double z) {
        return new FamilyOutlook(0, 0, 1).shareAbove(z);
    }
}
