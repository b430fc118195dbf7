package pippinry.nursery.internal.round;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import pippinry.model.ask.DueTask;
import pippinry.model.record.Done;
import pippinry.model.record.Event;
import pippinry.model.record.Kinds;
import pippinry.model.value.Decimal;
import pippinry.nursery.internal.work.Look;
import pippinry.nursery.internal.work.WorkRule;

/**
 * After a night below -2 °C in bloom (harms open flowers held there an hour: NIAB, 2022) set is counted a week later, and
 * the cross repeated on late flowers where nothing sets (common practice, no source). Which crosses it touched: those with a
 * branch pollinated in the ten days before the frost.
 */
public final class FrostCheck implements WorkRule {

    private static final int OPEN_DAYS = 10;

    @Override
    public String name() {
        return "frost-check";
    }

    @Override
    public Stream<DueTask> find(Look look) {
        List<Branch> branches = Branch.ofSeason(look.program(), look.today());
        return look.program().table(Kinds.EVENTS).stream()
                .filter(event -> event.kind().equals("frost"))
                .filter(event ->
                        event.lowestC().orElse(0) <= look.term("frost-harm").typical())
                .flatMap(frost -> frost.date().day().stream().flatMap(night -> tasks(look, frost, night, branches)));
    }

    private Stream<DueTask> tasks(Look look, Event frost, LocalDate night, List<Branch> branches) {
        Map<String, List<Branch>> hit = BranchTasks.byBatch(branches.stream().filter(branch -> isHit(branch, night)));
        return hit.entrySet().stream().map(batch -> task(look, frost, night, batch.getKey(), batch.getValue()));
    }

    private static boolean isHit(Branch branch, LocalDate night) {
        boolean counted = branch.day(Done.SET).filter(day -> day.isAfter(night)).isPresent();
        return !counted
                && !branch.isLost()
                && branch.firstPass()
                        .filter(pass -> !pass.isAfter(night) && pass.isAfter(night.minusDays(OPEN_DAYS)))
                        .isPresent();
    }

    private DueTask task(Look look, Event frost, LocalDate night, String batch, List<Branch> branches) {
        LocalDate due = night.plusDays(look.term("frost-count").days());
        return new DueTask(
                batch,
                name(),
                due,
                night.plusDays(look.term("frost-count").latest()),
                "Count what set on " + batch + " after the frost of " + night
                        + "; repeat on late flowers if nothing did",
                Decimal.write(frost.lowestC().orElseThrow()) + " °C; " + BranchTasks.count(branches) + ": "
                        + BranchTasks.list(branches),
                Optional.empty(),
                BranchTasks.numbers(branches));
    }
}
