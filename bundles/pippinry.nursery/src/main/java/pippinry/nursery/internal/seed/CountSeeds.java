package pippinry.nursery.internal.seed;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import pippinry.model.ask.DueTask;
import pippinry.model.record.SeedLot;
import pippinry.model.value.PartialDate;
import pippinry.nursery.internal.work.Caution;
import pippinry.nursery.internal.work.Look;
import pippinry.nursery.internal.work.WorkRule;

/** Picked fruit is cut, its full and empty seeds counted and washed, before seeds of two fruits can mix (common practice, no source). */
public final class CountSeeds implements WorkRule {

    private static final int DAYS = 14;

    @Override
    public String name() {
        return "count-seeds";
    }

    @Override
    public Stream<DueTask> find(Look look) {
        return Lots.all(look)
                .filter(lot -> Lots.isRecent(look, lot))
                .filter(lot -> lot.seedsFull().isEmpty() && !Lots.isSown(lot))
                .filter(lot -> LotSeeds.movedIn(look.program(), lot).isEmpty())
                .filter(lot -> ColdOfLot.of(look, lot).since().isEmpty())
                .map(this::task);
    }

    private DueTask task(SeedLot lot) {
        LocalDate picked = lot.harvestedOn().map(PartialDate::latest).orElseThrow();
        return new DueTask(
                Lots.batch(lot),
                name(),
                picked,
                picked.plusDays(DAYS),
                "Cut the fruit of lot " + lot.code() + ", count full and empty seeds, wash them",
                lot.fruits().isPresent() ? lot.fruits().getAsInt() + " fruits" : "fruits not counted",
                Caution.SEEDS.line(),
                List.of(lot.code().text()));
    }
}
