package pippinry.nursery.internal.emergence;

import java.util.OptionalDouble;

/**
 * Time at which half of the emerged stood, by straight lines between counts: (N + 1) / 2 of the N that emerged in the end.
 *
 * <p>Coolbear, P., Francis, A. & Grierson, D. 1984. The effect of low temperature pre-sowing treatment on the germination
 * performance and membrane integrity of artificially aged tomato seeds. Journal of Experimental Botany 35:1609-1617. It needs
 * no model and holds however few the counts are; it says nothing of seeds that never came up.
 */
public final class TimeToHalf {

    private TimeToHalf() {}

    /** Days after sowing; empty if none emerged. */
    public static OptionalDouble coolbear(Counting counting) {
        return reached(counting, (counting.emerged() + 1) / 2.0);
    }

    /**
     * The same with N / 2: Farooq, M., Basra, S. M. A., Ahmad, N. &amp; Hafeez, K. 2005. Thermal hardening: a new seed
     * vigor enhancement tool in rice. Journal of Integrative Plant Biology 47:187-193. */
    public static OptionalDouble farooq(Counting counting) {
        return reached(counting, counting.emerged() / 2.0);
    }

    /** Mean day of emergence, each seed on the day it was counted; empty if none emerged. */
    public static OptionalDouble mean(Counting counting) {
        double sum = counting.intervals().stream()
                .mapToDouble(interval -> interval.to() * interval.emerged())
                .sum();
        return counting.emerged() == 0 ? OptionalDouble.empty() : OptionalDouble.of(sum / counting.emerged());
    }

    private static OptionalDouble reached(Counting counting, double target) {
        double stood = 0;
        for (Counting.Interval interval : counting.intervals()) {
            double now = stood + interval.emerged();
            if (now >= target && interval.emerged() > 0) {
                double share = (target - stood) / interval.emerged();
                return OptionalDouble.of(interval.from() + share * (interval.to() - interval.from()));
            }
            stood = now;
        }
        return OptionalDouble.empty();
    }
}
