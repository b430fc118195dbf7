package pippinry.nursery.internal.copies;

import java.time.LocalDate;
import java.util.stream.Stream;
import pippinry.model.ask.DueTask;
import pippinry.model.record.Graft;
import pippinry.model.record.Kinds;
import pippinry.nursery.internal.work.Caution;
import pippinry.nursery.internal.work.Look;
import pippinry.nursery.internal.work.Term;
import pippinry.nursery.internal.work.WorkRule;

/**
 * Every graft is looked at and read as taken or failed; bench grafts in their first leaf, chip buds when the tie comes off
 * after four to six weeks (common practice, no source). A failed graft whose stock shoots can pass for a tree.
 */
public final class ReadGrafts implements WorkRule {

    private static final int FORGOTTEN_DAYS = 400;
    private static final int FIRST_LEAF_MONTH = 5;

    @Override
    public String name() {
        return "read-grafts";
    }

    @Override
    public Stream<DueTask> find(Look look) {
        Stream<Graft> unread = look.program().table(Kinds.GRAFTS).stream()
                .filter(graft -> graft.result().isBlank())
                .filter(graft -> graft.date().isPresent())
                .filter(graft -> look.isRecent(graft.date().orElseThrow().latest(), FORGOTTEN_DAYS));
        return Sitting.of(look.program(), unread).map(sitting -> task(look, sitting));
    }

    private DueTask task(Look look, Sitting sitting) {
        Term wait = look.term(sitting.isBudding() ? "take-bud" : "take-bench");
        LocalDate due = due(look, sitting, wait);
        return new DueTask(
                sitting.batch(),
                name(),
                due,
                due.plusDays(wait.latest() - wait.days()),
                "Read " + sitting.count() + " of " + sitting.batch() + ": taken or failed; rub off stock shoots",
                sitting.list() + "; made " + sitting.day()
                        + (sitting.method().isBlank()
                                ? ""
                                : ", " + sitting.method().replace('-', ' ')),
                Caution.BLADES.line(),
                sitting.numbers());
    }

    /** Bench grafts show nothing before the leaves of May. */
    private static LocalDate due(Look look, Sitting sitting, Term wait) {
        LocalDate due = sitting.day().plusDays(wait.days());
        LocalDate leaf = look.hemisphere().day(look.hemisphere().crossYear(sitting.day()), FIRST_LEAF_MONTH, 1);
        return !sitting.isBudding() && due.isBefore(leaf) ? leaf : due;
    }
}
