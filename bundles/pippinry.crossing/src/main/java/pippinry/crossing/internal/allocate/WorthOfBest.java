package pippinry.crossing.internal.allocate;

import java.util.List;
import pippinry.statistics.proportions.KnownShare;

/**
 * The expected worth of the best k seedlings of a plan, above a floor that a missing seedling counts as.
 *
 * <p>With N(x) the number of seedlings above x it is the integral from the floor upwards of the expected min(k, N(x)), that is of the
 * sum over j from 1 to k of P(N(x) >= j). N(x) is a sum of independent counts, one for each cross, binomial given the doubt of its
 * mean; the doubt is set at 0 and root three deviations either side with weights 2/3, 1/6, 1/6. Trapezoids of {@value #STEP}
 * deviations. Cost: steps x crosses x k squared.
 */
final class WorthOfBest {

    /** Worth of a seedling that is missing: one standard deviation below the mean of all parents (our choice). */
    static final double FLOOR = -1;

    private static final double STEP = 0.025;
    private static final double[] DOUBTS = {-Math.sqrt(3), 0, Math.sqrt(3)};
    private static final double[] WEIGHTS = {1.0 / 6, 2.0 / 3, 1.0 / 6};

    private WorthOfBest() {}

    static double of(List<Allocation.Part> plan, int best) {
        double top = FLOOR;
        for (Allocation.Part part : plan) {
            CrossOption cross = part.cross();
            top = Math.max(top, cross.mean() + Math.sqrt(3) * cross.doubt() + 6 * cross.spread());
        }
        int steps = (int) Math.ceil((top - FLOOR) / STEP);
        double sum = 0;
        for (int i = 0; i <= steps; i++) {
            sum += expected(plan, FLOOR + i * STEP, best) * (i == 0 || i == steps ? 0.5 : 1);
        }
        return sum * STEP;
    }

    /** Expected number of the best k that lie above a worth. */
    private static double expected(List<Allocation.Part> plan, double worth, int best) {
        double[] fewer = new double[best];
        fewer[0] = 1;
        for (Allocation.Part part : plan) {
            fewer = added(fewer, counts(part, worth, best));
        }
        double sum = 0;
        double below = 0;
        for (int j = 1; j <= best; j++) {
            below += fewer[j - 1];
            sum += 1 - below;
        }
        return sum;
    }

    /** Probability of each count below k; the rest is k or more. */
    private static double[] counts(Allocation.Part part, double worth, int best) {
        double[] counts = new double[best];
        for (int i = 0; i < DOUBTS.length; i++) {
            KnownShare share = new KnownShare(part.cross().chanceAbove(worth, DOUBTS[i]));
            double before = 0;
            for (int j = 0; j < best; j++) {
                double upTo = share.fewerThan(j + 1L, part.seedlings());
                counts[j] += WEIGHTS[i] * (upTo - before);
                before = upTo;
            }
        }
        return counts;
    }

    private static double[] added(double[] one, double[] other) {
        double[] sum = new double[one.length];
        for (int i = 0; i < one.length; i++) {
            for (int j = 0; i + j < one.length; j++) {
                sum[i + j] += one[i] * other[j];
            }
        }
        return sum;
    }
}
