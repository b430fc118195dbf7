package pippinry.nursery.internal.copies;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;
import pippinry.model.ask.DueTask;
import pippinry.model.record.Graft;
import pippinry.model.record.Kinds;
import pippinry.nursery.internal.work.Look;
import pippinry.nursery.internal.work.Term;
import pippinry.nursery.internal.work.WorkRule;

/**
 * In a graft's first summer stock shoots are rubbed off every two weeks, so that no sucker overtakes the scion and is taken
 * for the seedling (common practice, no source). From the middle of May to the end of August of the north.
 */
public final class RubOffShoots implements WorkRule {

    private static final String FAILED = "failed";

    @Override
    public String name() {
        return "rub-off-shoots";
    }

    @Override
    public Stream<DueTask> find(Look look) {
        return look.crossYears().boxed().flatMap(year -> ofYear(look, year));
    }

    private Stream<DueTask> ofYear(Look look, int year) {
        LocalDate first = look.hemisphere().day(year, 5, 15);
        LocalDate last = look.hemisphere().day(year, 8, 31);
        if (look.today().isAfter(last) || look.to().isBefore(first)) {
            return Stream.empty();
        }
        Stream<Graft> ofSpring = look.program().table(Kinds.GRAFTS).stream()
                .filter(graft -> !graft.result().equals(FAILED))
                .filter(graft -> graft.date().isPresent())
                .filter(graft ->
                        look.hemisphere().crossYear(graft.date().orElseThrow().latest()) == year);
        return Sitting.of(look.program(), ofSpring)
                .filter(sitting -> !sitting.isBudding())
                .flatMap(sitting -> rounds(look, sitting, first, last));
    }

    /** The round last due and those to come. */
    private Stream<DueTask> rounds(Look look, Sitting sitting, LocalDate first, LocalDate last) {
        Term every = look.term("rub-off");
        return Stream.iterate(first, day -> day.plusDays(every.days()))
                .takeWhile(day -> !day.isAfter(last) && !day.isAfter(look.to()))
                .filter(day -> day.plusDays(every.days()).isAfter(look.today()))
                .map(day -> new DueTask(
                        sitting.batch(),
                        name(),
                        day,
                        day.plusDays(every.latest() - every.days()),
                        "Rub the stock shoots off " + sitting.count() + " of " + sitting.batch(),
                        sitting.list() + "; compare the leaf with the seedling's own",
                        Optional.empty(),
                        sitting.numbers()));
    }
}
