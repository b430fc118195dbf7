package pippinry.statistics.proportions;

import org.hipparchus.distribution.continuous.NormalDistribution;

/** Confidence limits of a share from a count. */
public final class ProportionInterval {

    private ProportionInterval() {}

    /**
     * Score interval: Wilson, E. B. 1927. Probable inference, the law of succession, and statistical inference. Journal
     * of the American Statistical Association 22:209-212.
     *
     * @param confidence two-sided, for instance 0.95
     */
    public static Interval wilson(long successes, long trials, double confidence) {
        check(successes, trials, confidence);
        double z = new NormalDistribution().inverseCumulativeProbability((1 + confidence) / 2);
        double share = (double) successes / trials;
        double weight = 1 + z * z / trials;
        double middle = (share + z * z / (2 * trials)) / weight;
        double reach = z / weight * Math.sqrt(share * (1 - share) / trials + z * z / (4.0 * trials * trials));
        return new Interval(Math.max(0, middle - reach), Math.min(1, middle + reach));
    }

    /**
     * Exact interval: Clopper, C. J. & Pearson, E. S. 1934. The use of confidence or fiducial limits illustrated in the
     * case of the binomial. Biometrika 26:404-413.
     */
    public static Interval exact(long successes, long trials, double confidence) {
        check(successes, trials, confidence);
        double tail = (1 - confidence) / 2;
        return new Interval(lower(successes, trials, tail), upper(successes, trials, tail));
    }

    /** One-sided upper limit that the share exceeds only with the given small probability of the count. */
    public static double upperLimit(long successes, long trials, double confidence) {
        check(successes, trials, confidence);
        return upper(successes, trials, 1 - confidence);
    }

    /** One-sided lower limit. */
    public static double lowerLimit(long successes, long trials, double confidence) {
        check(successes, trials, confidence);
        return lower(successes, trials, 1 - confidence);
    }

    private static double lower(long successes, long trials, double tail) {
        return successes == 0 ? 0 : new BetaBelief(successes, trials - successes + 1.0).quantile(tail);
    }

    private static double upper(long successes, long trials, double tail) {
        return successes == trials ? 1 : new BetaBelief(successes + 1.0, trials - successes).quantile(1 - tail);
    }

    private static void check(long successes, long trials, double confidence) {
        if (trials < 1 || successes < 0 || successes > trials) {
            throw new IllegalArgumentException(successes + " of " + trials + " is not a share");
        }
        if (!(confidence > 0 && confidence < 1)) {
            throw new IllegalArgumentException("A confidence lies strictly between 0 and 1, not " + confidence);
        }
    }
}
