package pippinry.nursery.internal.emergence;

import java.util.List;

/**
 * Seeds of one lot that came up between one count and the next.
 *
 * @param sown how many there were
 * @param intervals in the order of time
 */
public record Counting(int sown, List<Interval> intervals) {

    /**
     * @param from days after sowing of the count before, 0 for the first
     * @param to days after sowing of this count
     * @param emerged new ones at this count
     */
    public record Interval(double from, double to, int emerged) {

        public Interval {
            if (!(from >= 0 && to > from) || emerged < 0) {
                throw new IllegalArgumentException("Counts come one after the other: " + from + " to " + to);
            }
        }
    }

    public Counting {
        intervals = List.copyOf(intervals);
        if (emerged(intervals) > sown) {
            throw new IllegalArgumentException(emerged(intervals) + " emerged of " + sown + " sown");
        }
    }

    public int emerged() {
        return emerged(intervals);
    }

    /** Intervals in which any came up. */
    public long fruitful() {
        return intervals.stream().filter(interval -> interval.emerged() > 0).count();
    }

    double lastDay() {
        return intervals.isEmpty() ? 0 : intervals.get(intervals.size() - 1).to();
    }

    private static int emerged(List<Interval> intervals) {
        return intervals.stream().mapToInt(Interval::emerged).sum();
    }
}
