package pippinry.nursery.internal.round;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pippinry.model.ask.DueTask;
import pippinry.model.record.Done;
import pippinry.nursery.internal.round.BranchTasks.Window;
import pippinry.nursery.internal.work.Look;
import pippinry.nursery.internal.work.WorkRule;

/** Branches whose bags are off, or that never had one, wait for their first count (common practice, no source). */
public final class SetCount implements WorkRule {

    @Override
    public String name() {
        return "set-count";
    }

    @Override
    public Stream<DueTask> find(Look look) {
        return BranchTasks.grouped(
                Branch.ofSeason(look.program(), look.today()).stream().filter(SetCount::isUncounted),
                branch -> window(look, branch),
                this::task);
    }

    private static boolean isUncounted(Branch branch) {
        boolean bagged = branch.was(Done.BAGGED) && !branch.was(Done.BAG_OFF);
        return !bagged && !branch.was(Done.SET) && !branch.was(Done.JUNE) && !branch.isLost();
    }

    private static Optional<Window> window(Look look, Branch branch) {
        LocalDate worked = branch.lastPass().or(branch::first).orElseThrow();
        LocalDate due = worked.plusDays(look.term("set-count").days());
        LocalDate off = branch.day(Done.BAG_OFF).orElse(due);
        return Optional.of(new Window(
                off.isAfter(due) ? off : due,
                worked.plusDays(look.term("set-count").latest())));
    }

    private DueTask task(String batch, Window window, List<Branch> branches) {
        return new DueTask(
                batch,
                name(),
                window.due(),
                window.until().isBefore(window.due()) ? window.due() : window.until(),
                "Count the set fruits on " + BranchTasks.count(branches) + " of " + batch,
                BranchTasks.list(branches),
                Optional.empty(),
                BranchTasks.numbers(branches));
    }
}
