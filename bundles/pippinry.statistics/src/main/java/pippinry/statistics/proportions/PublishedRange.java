package pippinry.statistics.proportions;

import pippinry.statistics.selection.NormalOrder;

/**
 * A share as it stands in the literature: a typical value and the lowest and highest of several sources or trials.
 *
 * <p>It becomes a beta prior with the typical value as mean. Its standard deviation is that of a normal sample of as
 * many values with this range: range / (2 E), E the expected largest of that many standard normals. Tippett, L. H. C.
 * 1925. On the extreme individuals and the range of samples taken from a normal population. Biometrika 17:364-387.
 * Values from different places and years vary more than one place does, so the prior is wide and own counts soon
 * outweigh it; that is wanted.
 *
 * @param typical strictly between 0 and 1
 * @param values how many values the range spans, at least 2
 */
public record PublishedRange(double low, double typical, double high, int values) {

    public PublishedRange {
        if (!(0 <= low && low <= typical && typical <= high && high <= 1 && low < high)) {
            throw new IllegalArgumentException(
                    "A published share needs 0 <= low <= typical <= high <= 1: " + low + ", " + typical + ", " + high);
        }
        if (typical <= 0 || typical >= 1) {
            throw new IllegalArgumentException("A typical share lies between 0 and 1, not " + typical);
        }
        if (values < 2) {
            throw new IllegalArgumentException("A range comes from two values or more, not " + values);
        }
    }

    public BetaBelief prior() {
        double deviation = (high - low) / (2 * NormalOrder.expectedBest(values));
        return BetaBelief.ofMoments(typical, deviation * deviation);
    }
}
