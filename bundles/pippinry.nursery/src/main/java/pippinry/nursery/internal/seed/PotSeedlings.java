package pippinry.nursery.internal.seed;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pippinry.model.ask.DueTask;
import pippinry.model.record.Emergence;
import pippinry.model.record.SeedLot;
import pippinry.nursery.internal.work.Look;
import pippinry.nursery.internal.work.Term;
import pippinry.nursery.internal.work.WorkRule;

/**
 * At two or three true leaves each seedling gets its own 1 l pot, its number and two labels (yvapplebreeders.com, seedling
 * production); about three weeks after the first emerge (common practice, no source).
 */
public final class PotSeedlings implements WorkRule {

    private static final int GIVEN_UP_DAYS = 250;

    @Override
    public String name() {
        return "pot";
    }

    @Override
    public Stream<DueTask> find(Look look) {
        return Lots.all(look)
                .filter(lot ->
                        Lots.isGrowing(look, lot, GIVEN_UP_DAYS) && lot.potted().isEmpty())
                .flatMap(lot -> firstEmerged(look, lot).map(day -> task(look, lot, day)).stream());
    }

    private static Optional<LocalDate> firstEmerged(Look look, SeedLot lot) {
        return EmergenceCounts.of(look.program(), lot.code()).stream()
                .filter(count -> count.emerged().orElse(0) > 0)
                .map(EmergenceCounts::day)
                .findFirst();
    }

    private DueTask task(Look look, SeedLot lot, LocalDate emerged) {
        Term wait = look.term("potting");
        int standing = EmergenceCounts.last(look.program(), lot.code())
                .map(Emergence::emerged)
                .orElseThrow()
                .getAsInt();
        return new DueTask(
                Lots.batch(lot),
                name(),
                emerged.plusDays(wait.days()),
                emerged.plusDays(wait.latest()),
                "Pot the seedlings of lot " + lot.code() + " and give each its number",
                standing + " stand; as many 1 l pots, " + 2 * standing + " labels; at two or three true leaves",
                Optional.empty(),
                List.of(lot.code().text()));
    }
}
