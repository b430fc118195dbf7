package pippinry.nursery.internal.emergence;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pippinry.model.Program;
import pippinry.model.record.Emergence;
import pippinry.model.record.SeedLot;
import pippinry.nursery.internal.seed.EmergenceCounts;
import pippinry.statistics.proportions.Interval;
import pippinry.statistics.proportions.ProportionInterval;

/**
 * How a sown lot came up. Counts are of all that stand; where damping off made a later count smaller, what stood before had
 * come up all the same.
 *
 * @param curve empty where the counts hold none
 */
public record LotEmergence(SeedLot lot, LocalDate sownOn, Counting counting, Optional<EmergenceCurve> curve) {

    private static final double CONFIDENCE = 0.95;

    /** Empty unless the lot was sown on a known day, in a known number, and counted since. */
    public static Optional<LotEmergence> of(Program program, SeedLot lot) {
        Optional<LocalDate> sownOn = lot.sownOn().flatMap(date -> date.day());
        if (sownOn.isEmpty() || lot.sown().isEmpty() || lot.sown().getAsInt() == 0) {
            return Optional.empty();
        }
        List<Counting.Interval> intervals = intervals(program, lot, sownOn.get());
        int emerged = intervals.stream().mapToInt(Counting.Interval::emerged).sum();
        if (intervals.isEmpty() || emerged > lot.sown().getAsInt()) {
            return Optional.empty();
        }
        Counting counting = new Counting(lot.sown().getAsInt(), intervals);
        return Optional.of(new LotEmergence(lot, sownOn.get(), counting, CurveFit.of(counting)));
    }

    private static List<Counting.Interval> intervals(Program program, SeedLot lot, LocalDate sownOn) {
        List<Counting.Interval> intervals = new ArrayList<>();
        double before = 0;
        int stood = 0;
        for (Emergence count : EmergenceCounts.of(program, lot.code())) {
            double day = ChronoUnit.DAYS.between(sownOn, EmergenceCounts.day(count));
            if (day > before) {
                int most = Math.max(stood, count.emerged().getAsInt());
                intervals.add(new Counting.Interval(before, day, most - stood));
                before = day;
                stood = most;
            }
        }
        return intervals;
    }

    /** Share that stood at the last count. */
    public double share() {
        return (double) counting.emerged() / counting.sown();
    }

    /** Limits of that share: score interval of Wilson (1927) at 95 %. */
    public Interval limits() {
        return ProportionInterval.wilson(counting.emerged(), counting.sown(), CONFIDENCE);
    }

    /** Days after sowing until half of the emerged stood: by the curve, else by lines between counts. */
    public OptionalDouble half() {
        return curve.isPresent() ? OptionalDouble.of(curve.get().half()) : TimeToHalf.coolbear(counting);
    }
}
