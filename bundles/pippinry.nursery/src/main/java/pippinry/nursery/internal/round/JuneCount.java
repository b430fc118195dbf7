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
 * After the June drop the fruits that stay are counted again and each gets its net (common practice, no source). It is
 * counted from the day of pollination, so that it holds in the south too.
 */
public final class JuneCount implements WorkRule {

    private static final int STILL_SHOWN_DAYS = 30;

    @Override
    public String name() {
        return "june-count";
    }

    @Override
    public Stream<DueTask> find(Look look) {
        return BranchTasks.grouped(
                Branch.ofSeason(look.program(), look.today()).stream().filter(JuneCount::waits),
                branch -> BranchTasks.after(
                        branch.firstPass().or(branch::first).orElseThrow(), look, "june-drop", STILL_SHOWN_DAYS),
                this::task);
    }

    private static boolean waits(Branch branch) {
        return !branch.was(Done.JUNE) && !branch.isLost() && !branch.isBare();
    }

    private DueTask task(String batch, Window window, List<Branch> branches) {
        return new DueTask(
                batch,
                name(),
                window.due(),
                window.until(),
                "Count the fruits left on " + BranchTasks.count(branches) + " of " + batch + " after the June drop",
                BranchTasks.list(branches) + "; write down what fell, and why",
                Optional.empty(),
                BranchTasks.numbers(branches));
    }
}
