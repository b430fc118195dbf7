package pippinry.nursery.internal.plan;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;
import pippinry.model.ask.DueTask;
import pippinry.model.value.Code;
import pippinry.model.value.PollenParent.How;
import pippinry.nursery.internal.work.Caution;
import pippinry.nursery.internal.work.Look;
import pippinry.nursery.internal.work.WorkRule;

/**
 * The work of the two weeks of bloom: petals and stamens off at balloon stage, bag, pollen when the stigma shines, tag
 * (common practice, no source). Bags matter: flowers without petals still draw bees late in bloom, so taking off petals
 * does not keep stray pollen out (study on Cox, scilit.com/publications/316f375b0fde118b73ca1104c8e39ee0, abstract).
 */
public final class PollinateCross implements WorkRule {

    private static final int BALLOON_BEFORE_DAYS = 5;
    private static final int LAST_FLOWERS_DAYS = 3;

    @Override
    public String name() {
        return "pollinate";
    }

    @Override
    public Stream<DueTask> find(Look look) {
        return PlannedCross.of(look)
                .filter(planned -> planned.cross().pollenParent().how() != How.OPEN)
                .map(planned -> task(look, planned));
    }

    private DueTask task(Look look, PlannedCross planned) {
        Optional<LocalDate> bloom = planned.seedBloom(look);
        LocalDate due = bloom.map(day -> day.minusDays(BALLOON_BEFORE_DAYS))
                .orElseGet(() -> look.hemisphere().day(planned.year(), 4, 15));
        LocalDate until = bloom.map(day -> day.plusDays(LAST_FLOWERS_DAYS))
                .orElseGet(() -> look.hemisphere().day(planned.year(), 5, 31));
        return new DueTask(
                planned.code(),
                name(),
                due,
                until,
                "Emasculate at balloon stage, bag, pollinate and tag " + planned.named(look.program()),
                FlowersNeeded.words(look, planned.cross())
                        + bloom.map(day -> "; full bloom about " + day + " by own dates")
                                .orElse("; no bloom of the seed parent on file: dated by the calendar"),
                Caution.LADDERS.line(),
                planned.cross().seedParent().map(Code::text).stream().toList());
    }
}
