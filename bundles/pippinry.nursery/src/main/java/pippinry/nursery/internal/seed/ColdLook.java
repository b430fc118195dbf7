package pippinry.nursery.internal.seed;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pippinry.model.ask.DueTask;
import pippinry.nursery.internal.work.Look;
import pippinry.nursery.internal.work.WorkRule;

/** Lots in the cold are opened monthly against mould, dryness, mice and early roots (common practice, no source). */
public final class ColdLook implements WorkRule {

    @Override
    public String name() {
        return "look-at-cold-seed";
    }

    @Override
    public Stream<DueTask> find(Look look) {
        return Lots.all(look)
                .filter(lot -> !Lots.isSown(lot))
                .map(lot -> ColdOfLot.of(look, lot))
                .filter(ColdOfLot::isInTheCold)
                .flatMap(cold -> looks(look, cold));
    }

    /** The last one that was due, and those to come. */
    private Stream<DueTask> looks(Look look, ColdOfLot cold) {
        long every = look.term("cold-look").days();
        LocalDate since = cold.since().orElseThrow();
        long past = Math.max(1, ChronoUnit.DAYS.between(since, look.today()) / every);
        return Stream.iterate(past, number -> number + 1)
                .map(number -> since.plusDays(number * every))
                .takeWhile(day -> !day.isAfter(look.to()))
                .map(day -> task(look, cold, day));
    }

    private DueTask task(Look look, ColdOfLot cold, LocalDate day) {
        long slack = look.term("cold-look").latest() - look.term("cold-look").days();
        return new DueTask(
                Lots.batch(cold.lot()),
                name(),
                day,
                day.plusDays(slack),
                "Open lot " + cold.lot().code() + " in the cold: mould, dryness, early roots",
                Math.round(cold.days()) + " of about " + cold.target().days() + " days so far; " + cold.where(),
                Optional.empty(),
                List.of(cold.lot().code().text()));
    }
}
