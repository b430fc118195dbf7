package pippinry.statistics.proportions;

import java.util.OptionalLong;

/**
 * The smallest number of independent trials that gives at least so many successes with a wished certainty.
 *
 * <p>Sedcole, J. R. 1977. Number of plants necessary to recover a trait. Crop Science 17:667-668; here from the exact
 * distribution, not by an approximation. The certainty grows with the number of trials, so doubling and halving find
 * the number in about 2 log2(n) evaluations of the lower tail.
 */
public final class TrialsNeeded {

    /** Beyond this many trials the answer is of no use to anybody. */
    static final long MOST = 1L << 50;

    /** Rounding in the tail must not ask for one trial more where the certainty is met exactly. */
    private static final double SLACK = 1 + 1e-10;

    private TrialsNeeded() {}

    /**
     * Empty when no number of trials is enough.
     *
     * @param least successes wanted, at least 1
     * @param sure wished certainty, strictly between 0 and 1
     */
    public static OptionalLong atLeast(long least, Share share, double sure) {
        check(least, sure);
        double allowed = (1 - sure) * SLACK;
        if (1 - share.ceiling(least) > allowed) {
            return OptionalLong.empty();
        }
        long enough = least;
        while (share.fewerThan(least, enough) > allowed) {
            if (enough > MOST / 2) {
                return OptionalLong.empty();
            }
            enough *= 2;
        }
        return OptionalLong.of(smallest(least, share, allowed, enough));
    }

    private static long smallest(long least, Share share, double allowed, long enough) {
        long low = least - 1;
        long high = enough;
        while (high - low > 1) {
            long middle = low + (high - low) / 2;
            if (share.fewerThan(least, middle) > allowed) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    private static void check(long least, double sure) {
        if (least < 1) {
            throw new IllegalArgumentException("At least one success must be wanted, not " + least);
        }
        if (!(sure > 0 && sure < 1)) {
            throw new IllegalArgumentException("The certainty lies strictly between 0 and 1, not " + sure);
        }
    }
}
