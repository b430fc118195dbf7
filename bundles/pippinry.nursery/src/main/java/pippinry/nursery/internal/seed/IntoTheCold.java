package pippinry.nursery.internal.seed;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pippinry.model.ask.DueTask;
import pippinry.model.record.SeedLot;
import pippinry.nursery.internal.work.Look;
import pippinry.nursery.internal.work.Term;
import pippinry.nursery.internal.work.WorkRule;

/**
 * Washed seed goes into moist sand or paper at refrigerator heat from October to December of the north, so that it can be
 * sown after New Year (need of cold: yvapplebreeders.com, seedling production; months common practice, no source). Every lot
 * is split in two places.
 */
public final class IntoTheCold implements WorkRule {

    @Override
    public String name() {
        return "into-the-cold";
    }

    @Override
    public Stream<DueTask> find(Look look) {
        return Lots.all(look)
                .filter(lot -> Lots.isRecent(look, lot) && !Lots.isSown(lot))
                .filter(lot -> lot.seedsFull().orElse(1) > 0)
                .filter(lot -> ColdOfLot.of(look, lot).since().isEmpty())
                .map(lot -> task(look, lot));
    }

    private DueTask task(Look look, SeedLot lot) {
        LocalDate picked = lot.harvestedOn().orElseThrow().latest();
        int year = look.hemisphere().crossYear(picked);
        LocalDate october = look.hemisphere().day(year, 10, 1);
        LocalDate due = picked.isAfter(october) ? picked : october;
        Term target = look.term("chilling-days");
        return new DueTask(
                Lots.batch(lot),
                name(),
                due,
                look.hemisphere().day(year, 12, 31),
                "Pack lot " + lot.code() + " moist and put it into the cold, split in two places",
                Lots.seeds(look, lot) + "; needs about " + target.days() + " days (" + target.basis() + ")",
                Optional.empty(),
                List.of(lot.code().text()));
    }
}
