package pippinry.nursery.internal.plan;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;
import pippinry.model.ask.DueTask;
import pippinry.nursery.internal.work.Look;
import pippinry.nursery.internal.work.WorkRule;

/**
 * Both parents are walked every second day from three weeks before their bloom, and stages 59, 61, 65 and 69 noted (what to
 * note: BBCH; the rest common practice, no source). Without own bloom dates: March and April of the north.
 */
public final class BloomWatch implements WorkRule {

    private static final int BEFORE_DAYS = 21;

    @Override
    public String name() {
        return "bloom-watch";
    }

    @Override
    public Stream<DueTask> find(Look look) {
        return PlannedCross.of(look).map(planned -> task(look, planned));
    }

    private DueTask task(Look look, PlannedCross planned) {
        Optional<LocalDate> first = Stream.concat(planned.seedBloom(look).stream(), planned.pollenBloom(look).stream())
                .min(LocalDate::compareTo);
        LocalDate due = first.map(bloom -> bloom.minusDays(BEFORE_DAYS))
                .orElseGet(() -> look.hemisphere().day(planned.year(), 3, 20));
        LocalDate until = first.orElseGet(() -> look.hemisphere().day(planned.year(), 4, 30));
        return new DueTask(
                planned.code(),
                name(),
                due,
                until,
                "Walk every second day to both parents of " + planned.named(look.program()),
                "note first flower, full bloom and petal fall; "
                        + first.map(bloom -> "first full bloom about " + bloom + " by own dates")
                                .orElse("no bloom of theirs on file: dated by the calendar"),
                Optional.empty(),
                planned.parents());
    }
}
