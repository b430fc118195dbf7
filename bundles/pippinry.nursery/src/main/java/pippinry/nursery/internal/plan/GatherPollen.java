package pippinry.nursery.internal.plan;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pippinry.model.Program;
import pippinry.model.Row;
import pippinry.model.ask.DueTask;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.record.PollenLot;
import pippinry.model.value.Code;
import pippinry.nursery.internal.work.Caution;
import pippinry.nursery.internal.work.Look;
import pippinry.nursery.internal.work.WorkRule;

/**
 * Pollen is picked at balloon stage (BBCH 59), some days before full bloom, dried, bottled and kept cold (common practice, no
 * source). Stored pollen of last season that is on file is named, since a pollen parent that flowers too late needs it.
 */
public final class GatherPollen implements WorkRule {

    private static final int BALLOON_BEFORE_DAYS = 6;
    private static final int OPEN_BEFORE_DAYS = 2;

    @Override
    public String name() {
        return "gather-pollen";
    }

    @Override
    public Stream<DueTask> find(Look look) {
        return PlannedCross.of(look).flatMap(planned -> planned.pollenParents().stream()
                .filter(parent -> lots(look.program(), parent).noneMatch(lot -> isGathered(look, lot, planned.year())))
                .map(parent -> task(look, planned, parent)));
    }

    private static boolean isGathered(Look look, PollenLot lot, int crossYear) {
        LocalDate newYear = look.hemisphere().day(crossYear, 1, 1);
        return lot.gatheredOn().filter(date -> !date.latest().isBefore(newYear)).isPresent();
    }

    private DueTask task(Look look, PlannedCross planned, Code<Genotype> parent) {
        Optional<LocalDate> bloom = look.fullBloom(parent, planned.year());
        LocalDate due = bloom.map(day -> day.minusDays(BALLOON_BEFORE_DAYS))
                .orElseGet(() -> look.hemisphere().day(planned.year(), 4, 10));
        LocalDate until = bloom.map(day -> day.minusDays(OPEN_BEFORE_DAYS))
                .orElseGet(() -> look.hemisphere().day(planned.year(), 4, 30));
        return new DueTask(
                planned.code(),
                name(),
                due,
                until,
                "Pick balloon flowers of " + PlannedCross.name(look.program(), parent) + " and dry their pollen for "
                        + planned.code(),
                detail(look, planned, parent),
                Caution.POLLEN.line(),
                List.of(parent.text()));
    }

    private static String detail(Look look, PlannedCross planned, Code<Genotype> parent) {
        String stored = lots(look.program(), parent)
                .filter(lot -> lot.vials().orElse(0) > 0)
                .map(lot -> lot.lot() + " (" + lot.vials().getAsInt() + " vials)")
                .collect(Collectors.joining(", "));
        String own = stored.isEmpty() ? "no stored pollen on file" : "stored: " + stored;
        return lateness(look, planned, parent).map(late -> late + "; " + own).orElse(own);
    }

    /** Says it when the pollen parent flowers after the seed parent, whose flowers will not wait. */
    private static Optional<String> lateness(Look look, PlannedCross planned, Code<Genotype> parent) {
        return look.fullBloom(parent, planned.year())
                .flatMap(pollen -> planned.seedBloom(look).map(seed -> ChronoUnit.DAYS.between(seed, pollen)))
                .filter(days -> days > 0)
                .map(days -> "flowers " + days + " days after the seed parent: have stored pollen ready");
    }

    private static Stream<PollenLot> lots(Program program, Code<Genotype> parent) {
        List<Row<PollenLot>> citing = program.table(Kinds.POLLEN).citing(parent.text());
        return citing.stream().map(Row::value).filter(lot -> lot.genotype().equals(Optional.of(parent)));
    }
}
