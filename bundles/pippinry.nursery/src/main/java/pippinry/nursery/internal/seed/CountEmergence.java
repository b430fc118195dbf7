package pippinry.nursery.internal.seed;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import pippinry.model.ask.DueTask;
import pippinry.model.record.Emergence;
import pippinry.model.record.SeedLot;
import pippinry.nursery.internal.work.Look;
import pippinry.nursery.internal.work.Term;
import pippinry.nursery.internal.work.WorkRule;

/**
 * Emerged seedlings are counted weekly until no more come (common practice, no source), from three to seven weeks after
 * sowing (yvapplebreeders.com, seedling production).
 */
public final class CountEmergence implements WorkRule {

    private static final int GIVEN_UP_DAYS = 100;

    @Override
    public String name() {
        return "count-emergence";
    }

    @Override
    public Stream<DueTask> find(Look look) {
        return Lots.all(look)
                .filter(lot ->
                        Lots.isGrowing(look, lot, GIVEN_UP_DAYS) && lot.potted().isEmpty())
                .filter(lot -> !isOver(look, lot))
                .map(lot -> task(look, lot));
    }

    /** Over when all stand, or when two counts after the usual time are the same. */
    private static boolean isOver(Look look, SeedLot lot) {
        List<Emergence> counts = EmergenceCounts.of(look.program(), lot.code());
        if (counts.isEmpty()) {
            return false;
        }
        Emergence last = counts.get(counts.size() - 1);
        boolean all =
                lot.sown().isPresent() && last.emerged().orElse(0) >= lot.sown().getAsInt();
        boolean late = !EmergenceCounts.day(last)
                .isBefore(Lots.sown(lot).plusDays(look.term("emergence").latest()));
        return all || late && stoodStill(counts);
    }

    private static boolean stoodStill(List<Emergence> counts) {
        return counts.size() > 1
                && counts.get(counts.size() - 2)
                        .emerged()
                        .equals(counts.get(counts.size() - 1).emerged());
    }

    private DueTask task(Look look, SeedLot lot) {
        Term weekly = look.term("emergence-count");
        LocalDate first =
                Lots.sown(lot).plusDays(Math.round(look.term("emergence").low().orElseThrow()));
        Optional<Emergence> last = EmergenceCounts.last(look.program(), lot.code());
        LocalDate due = last.map(EmergenceCounts::day)
                .map(day -> day.plusDays(weekly.days()))
                .filter(first::isBefore)
                .orElse(first);
        OptionalInt standing = last.map(Emergence::emerged).orElse(OptionalInt.empty());
        return new DueTask(
                Lots.batch(lot),
                name(),
                due,
                due.plusDays(weekly.latest() - weekly.days()),
                "Count what has emerged of lot " + lot.code(),
                (standing.isPresent() ? standing.getAsInt() + " stood at the last count" : "not counted yet")
                        + (lot.sown().isPresent() ? ", " + lot.sown().getAsInt() + " sown " : ", sown ")
                        + Lots.sown(lot),
                Optional.empty(),
                List.of(lot.code().text()));
    }
}
