package pippinry.nursery.internal.copies;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;
import pippinry.model.ask.DueTask;
import pippinry.nursery.internal.work.Look;
import pippinry.nursery.internal.work.WorkRule;

/**
 * Seedlings are lined out after the last frost until October of the north, watered and guarded from rabbits, and their place
 * is written down the same day (common practice, no source). Those that stood over in their pots come up again each spring.
 */
public final class PlantOut implements WorkRule {

    private static final int LAST_MONTH = 10;

    @Override
    public String name() {
        return "plant-out";
    }

    @Override
    public Stream<DueTask> find(Look look) {
        return PottedFamily.of(look).map(family -> task(look, family));
    }

    private DueTask task(Look look, PottedFamily family) {
        int year = look.hemisphere().crossYear(look.today());
        LocalDate frost = look.lastFrost(year);
        return new DueTask(
                family.batch(),
                name(),
                frost.plusDays(1),
                look.hemisphere().day(year, LAST_MONTH, 31),
                "Plant out " + family.count() + " of " + family.batch() + " and write down row and place the same day",
                HardenOff.frostWords(look, year) + "; shade cloth for the first days, guards at once",
                Optional.empty(),
                family.numbers());
    }
}
