package pippinry.nursery.internal.plan;

import java.util.Optional;
import java.util.stream.Stream;
import pippinry.model.ask.DueTask;
import pippinry.nursery.internal.work.Look;
import pippinry.nursery.internal.work.WorkRule;

/** Bags, tags, vials, drying agent and brushes are got in February and March (common practice, no source). */
public final class MakeReady implements WorkRule {

    private static final int STILL_SHOWN_DAYS = 30;

    @Override
    public String name() {
        return "make-ready";
    }

    @Override
    public Stream<DueTask> find(Look look) {
        return PlannedCross.of(look)
                .map(planned -> task(look, planned))
                .filter(task -> look.isRecent(task.until(), STILL_SHOWN_DAYS));
    }

    private DueTask task(Look look, PlannedCross planned) {
        return new DueTask(
                planned.code(),
                name(),
                look.hemisphere().day(planned.year(), 2, 1),
                look.hemisphere().day(planned.year(), 3, 31),
                "Get bags, vials and brushes and print the tags for " + planned.named(look.program()),
                FlowersNeeded.words(look, planned.cross()),
                Optional.empty());
    }
}
