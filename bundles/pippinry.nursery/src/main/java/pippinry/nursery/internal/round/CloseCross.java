package pippinry.nursery.internal.round;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pippinry.model.ask.DueTask;
import pippinry.nursery.internal.round.BranchTasks.Window;
import pippinry.nursery.internal.work.Look;
import pippinry.nursery.internal.work.WorkRule;

/**
 * At the year's close every branch has an end: picked, bare or lost with a cause (common practice, no source). Those without
 * are asked for until they have one, while the season is still remembered.
 */
public final class CloseCross implements WorkRule {

    @Override
    public String name() {
        return "close-cross";
    }

    @Override
    public Stream<DueTask> find(Look look) {
        return BranchTasks.grouped(
                Branch.ofSeason(look.program(), look.today()).stream()
                        .filter(branch -> !branch.isLost() && !branch.isBare()),
                branch -> Optional.of(window(look, branch)),
                this::task);
    }

    private static Window window(Look look, Branch branch) {
        int year = look.hemisphere().crossYear(branch.first().orElseThrow());
        LocalDate november = look.hemisphere().day(year, 11, 15);
        return new Window(november, look.hemisphere().day(year, 12, 31));
    }

    private DueTask task(String batch, Window window, List<Branch> branches) {
        return new DueTask(
                batch,
                name(),
                window.due(),
                window.until(),
                "Write down what became of " + BranchTasks.count(branches) + " of " + batch,
                BranchTasks.list(branches) + "; neither picked, bare nor lost",
                Optional.empty());
    }
}
