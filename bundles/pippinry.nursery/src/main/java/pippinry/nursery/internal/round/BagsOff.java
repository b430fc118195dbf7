package pippinry.nursery.internal.round;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pippinry.model.ask.DueTask;
import pippinry.model.record.Done;
import pippinry.nursery.internal.round.BranchTasks.Window;
import pippinry.nursery.internal.work.Caution;
import pippinry.nursery.internal.work.Look;
import pippinry.nursery.internal.work.WorkRule;

/**
 * After petal fall bags come off, set is counted and nets go on. Petal fall is BBCH 69 of the seed tree where it was noted
 * this spring, else some days after the last pass (common practice, no source).
 */
public final class BagsOff implements WorkRule {

    @Override
    public String name() {
        return "bags-off";
    }

    @Override
    public Stream<DueTask> find(Look look) {
        return BranchTasks.grouped(
                Branch.ofSeason(look.program(), look.today()).stream().filter(BagsOff::isStillBagged),
                branch -> window(look, branch),
                this::task);
    }

    private static boolean isStillBagged(Branch branch) {
        return branch.was(Done.BAGGED)
                && !branch.was(Done.BAG_OFF)
                && !branch.was(Done.SET)
                && !branch.was(Done.JUNE)
                && !branch.isLost();
    }

    private static Optional<Window> window(Look look, Branch branch) {
        LocalDate worked = branch.lastPass().or(branch::first).orElseThrow();
        LocalDate due = BranchTasks.seedTree(look.program(), branch)
                .flatMap(tree -> PetalFall.after(look.program(), tree, worked))
                .orElse(worked.plusDays(look.term("bags-off").days()));
        return Optional.of(new Window(due, due.plusDays(7)));
    }

    private DueTask task(String batch, Window window, List<Branch> branches) {
        return new DueTask(
                batch,
                name(),
                window.due(),
                window.until(),
                "Take the bags off " + BranchTasks.count(branches) + " of " + batch + ", count set, put nets on",
                BranchTasks.list(branches),
                Caution.LADDERS.line(),
                BranchTasks.numbers(branches));
    }
}
