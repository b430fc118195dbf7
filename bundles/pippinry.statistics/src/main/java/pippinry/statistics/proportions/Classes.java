package pippinry.statistics.proportions;

import java.util.Arrays;

/** Observed counts by class beside the ratio they are held against. */
public final class Classes {

    private final long[] observed;
    private final double[] expected;

    /**
     * @param observed counts, not all zero
     * @param ratio one part for each class, in any unit; a class may have part zero
     */
    public Classes(long[] observed, double[] ratio) {
        this.observed = observed.clone();
        this.expected = ratio.clone();
        if (observed.length != ratio.length || observed.length < 2) {
            throw new IllegalArgumentException(observed.length + " observed and " + ratio.length
                    + " expected classes: both need the same number, two or more");
        }
        if (Arrays.stream(observed).anyMatch(n -> n < 0) || total() == 0) {
            throw new IllegalArgumentException(
                    "Counts must not be negative nor all zero: " + Arrays.toString(observed));
        }
        if (Arrays.stream(ratio).anyMatch(part -> !(part >= 0) || Double.isInfinite(part)) || parts() == 0) {
            throw new IllegalArgumentException("Parts must not be negative nor all zero: " + Arrays.toString(ratio));
        }
    }

    public int count() {
        return observed.length;
    }

    public long total() {
        return Arrays.stream(observed).sum();
    }

    public long observed(int i) {
        return observed[i];
    }

    /** Expected share of a class. */
    public double share(int i) {
        return expected[i] / parts();
    }

    /** Expected count of a class. */
    public double expected(int i) {
        return total() * share(i);
    }

    /** True when something was seen in a class that the ratio does not allow. */
    public boolean refuted() {
        for (int i = 0; i < observed.length; i++) {
            if (expected[i] == 0 && observed[i] > 0) {
                return true;
            }
        }
        return false;
    }

    /** The classes that the ratio allows. */
    public int[] allowed() {
        int[] all = new int[observed.length];
        int n = 0;
        for (int i = 0; i < observed.length; i++) {
            if (expected[i] > 0) {
                all[n++] = i;
            }
        }
        return Arrays.copyOf(all, n);
    }

    private double parts() {
        return Arrays.stream(expected).sum();
    }
}
