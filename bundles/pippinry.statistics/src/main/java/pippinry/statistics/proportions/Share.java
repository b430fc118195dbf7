package pippinry.statistics.proportions;

/** What is known of the share of trials that succeed, from which counts can be foretold. */
public interface Share {

    /** Expected share, between 0 and 1. */
    double mean();

    /** Probability that fewer than {@code least} of {@code trials} independent trials succeed. */
    double fewerThan(long least, long trials);

    /** The largest probability of at least {@code least} successes that any number of trials can reach. */
    double ceiling(long least);
}
