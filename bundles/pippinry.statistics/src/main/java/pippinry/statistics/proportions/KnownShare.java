package pippinry.statistics.proportions;

/**
 * A share that is known exactly, so that counts are binomial.
 *
 * <p>The lower tail is the sum of its terms, each from the one before, scaled on the way: full relative precision, cost
 * in proportion to the least number wanted.
 *
 * @param value between 0 and 1
 */
public record KnownShare(double value) implements Share {

    public KnownShare {
        if (!(value >= 0 && value <= 1)) {
            throw new IllegalArgumentException("A share lies between 0 and 1, not " + value);
        }
    }

    @Override
    public double mean() {
        return value;
    }

    @Override
    public double fewerThan(long least, long trials) {
        if (least <= 0) {
            return 0;
        }
        if (least > trials || value == 0) {
            return 1;
        }
        return value == 1 ? 0 : lowerTail(least, trials);
    }

    @Override
    public double ceiling(long least) {
        return value > 0 || least <= 0 ? 1 : 0;
    }

    private double lowerTail(long least, long trials) {
        double odds = value / (1 - value);
        return TermSum.of(trials * Math.log1p(-value), least, j -> (double) (trials - j) / (j + 1) * odds);
    }
}
