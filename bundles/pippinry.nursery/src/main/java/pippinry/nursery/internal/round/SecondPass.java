package pippinry.nursery.internal.round;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pippinry.model.ask.DueTask;
import pippinry.model.record.Done;
import pippinry.nursery.internal.round.BranchTasks.Window;
import pippinry.nursery.internal.work.Look;
import pippinry.nursery.internal.work.WorkRule;

/**
 * Flowers pollinated once are pollinated again two days later (common practice, no source), while they can still be
 * fertilised: three to five days after they opened (NIAB apple guide, effective pollination period). After that the chance
 * is gone, and the branch stays on record as one that got a single pass.
 */
public final class SecondPass implements WorkRule {

    private static final int STILL_SHOWN_DAYS = 7;

    @Override
    public String name() {
        return "second-pass";
    }

    @Override
    public Stream<DueTask> find(Look look) {
        return BranchTasks.grouped(
                Branch.ofSeason(look.program(), look.today()).stream().filter(SecondPass::gotOnePass),
                branch -> BranchTasks.after(branch.firstPass().orElseThrow(), look, "second-pass", STILL_SHOWN_DAYS),
                this::task);
    }

    /** Whether it was pollinated by hand on one day only, and neither lost nor looked at since petal fall. */
    public static boolean gotOnePass(Branch branch) {
        return branch.isHand()
                && branch.passes() == 1
                && !branch.isLost()
                && !branch.was(Done.BAG_OFF)
                && !branch.was(Done.SET);
    }

    private DueTask task(String batch, Window window, List<Branch> branches) {
        return new DueTask(
                batch,
                name(),
                window.due(),
                window.until(),
                "Pollinate " + BranchTasks.count(branches) + " of " + batch + " a second time",
                BranchTasks.list(branches) + "; flowers can be fertilised for 3 to 5 days after they open",
                Optional.empty(),
                BranchTasks.numbers(branches));
    }
}
