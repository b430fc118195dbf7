package pippinry.nursery.internal.plan;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import pippinry.model.ask.DueTask;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.record.PollenLot;
import pippinry.model.value.Code;
import pippinry.nursery.internal.work.Look;
import pippinry.nursery.internal.work.WorkRule;

/** Stored pollen that a planned cross may need is germinated on a smear of sugar agar in February or March (common practice, no source). */
public final class TestPollen implements WorkRule {

    @Override
    public String name() {
        return "test-pollen";
    }

    @Override
    public Stream<DueTask> find(Look look) {
        return PlannedCross.of(look).flatMap(planned -> lotsOf(look, planned)).distinct();
    }

    private Stream<DueTask> lotsOf(Look look, PlannedCross planned) {
        Set<Code<Genotype>> parents = new HashSet<>(planned.pollenParents());
        LocalDate newYear = look.hemisphere().day(planned.year(), 1, 1);
        return look.program().table(Kinds.POLLEN).stream()
                .filter(lot -> lot.vials().orElse(0) > 0)
                .filter(lot -> lot.genotype().filter(parents::contains).isPresent())
                .filter(lot -> isOld(lot, newYear) && !isTested(lot, newYear))
                .map(lot -> task(look, planned, lot));
    }

    private static boolean isOld(PollenLot lot, LocalDate newYear) {
        return lot.gatheredOn().filter(date -> date.latest().isBefore(newYear)).isPresent();
    }

    private static boolean isTested(PollenLot lot, LocalDate newYear) {
        return lot.testedOn().filter(date -> !date.latest().isBefore(newYear)).isPresent();
    }

    private DueTask task(Look look, PlannedCross planned, PollenLot lot) {
        return new DueTask(
                lot.lot().text(),
                name(),
                look.hemisphere().day(planned.year(), 2, 15),
                look.hemisphere().day(planned.year(), 4, 15),
                "Test a smear of the stored pollen " + lot.lot() + " for germination",
                lot.vials().getAsInt() + " vials, gathered " + lot.gatheredOn().orElseThrow()
                        + (lot.germinatedPct().isPresent()
                                ? ", " + Math.round(lot.germinatedPct().getAsDouble()) + " % germinated before"
                                : ""),
                Optional.empty());
    }
}
