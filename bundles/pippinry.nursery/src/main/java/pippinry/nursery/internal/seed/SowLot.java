package pippinry.nursery.internal.seed;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import pippinry.model.Row;
import pippinry.model.ask.DueTask;
import pippinry.model.record.Emergence;
import pippinry.model.record.Kinds;
import pippinry.model.record.Score;
import pippinry.model.record.SeedLot;
import pippinry.model.value.PartialDate;
import pippinry.nursery.internal.work.Counted;
import pippinry.nursery.internal.work.Look;
import pippinry.nursery.internal.work.WorkRule;

/**
 * A lot is sown when its cold is enough, or at once when roots show before time. One cross to a pot or row, pots in a listed
 * order and mapped (common practice, no source); up to 12 seeds to a 16 cm pot under 1 cm of compost (yvapplebreeders.com,
 * seedling production). Roots are noted as a score {@code seed.roots} of the lot, or as emergence before sowing.
 */
public final class SowLot implements WorkRule {

    private static final String ROOTS = "seed.roots";
    private static final int SEEDS_TO_A_POT = 12;
    private static final int AT_ONCE_DAYS = 7;

    @Override
    public String name() {
        return "sow";
    }

    @Override
    public Stream<DueTask> find(Look look) {
        return Lots.all(look)
                .filter(lot -> !Lots.isSown(lot))
                .map(lot -> ColdOfLot.of(look, lot))
                .filter(cold -> cold.isInTheCold() || Lots.isRecent(look, cold.lot()))
                .flatMap(cold -> task(look, cold).stream());
    }

    private Optional<DueTask> task(Look look, ColdOfLot cold) {
        Optional<LocalDate> roots = rootsSeen(look, cold.lot());
        if (roots.isPresent()) {
            return Optional.of(
                    task(look, cold, roots.get(), roots.get().plusDays(AT_ONCE_DAYS), "roots seen before time"));
        }
        return cold.ready().map(day -> task(look, cold, day, cold.overdue().orElse(day), coldWords(cold)));
    }

    private DueTask task(Look look, ColdOfLot cold, LocalDate due, LocalDate until, String why) {
        return new DueTask(
                Lots.batch(cold.lot()),
                name(),
                due,
                until,
                "Sow lot " + cold.lot().code(),
                why + "; " + pots(look, cold.lot()),
                Optional.empty(),
                List.of(cold.lot().code().text()));
    }

    private static String coldWords(ColdOfLot cold) {
        return Math.round(cold.days()) + " of about " + cold.target().days() + " days of cold so far ("
                + cold.target().basis() + ")";
    }

    private static String pots(Look look, SeedLot lot) {
        OptionalInt seeds = LotSeeds.of(look.program(), lot);
        return seeds.isEmpty()
                ? "seeds not counted"
                : Counted.of(seeds.getAsInt(), "full seed") + ", "
                        + Counted.of(-Math.floorDiv(-seeds.getAsInt(), SEEDS_TO_A_POT), "pot")
                        + " of 16 cm with at most 12 each";
    }

    private static Optional<LocalDate> rootsSeen(Look look, SeedLot lot) {
        Stream<PartialDate> scored = look
                .program()
                .table(Kinds.SCORES)
                .citing(lot.code().text())
                .stream()
                .map(Row::value)
                .filter(score ->
                        score.trait().equals(ROOTS) && score.value().number().orElse(0) > 0)
                .flatMap(score -> dateOf(score).stream());
        Stream<PartialDate> emerged = look
                .program()
                .table(Kinds.EMERGENCE)
                .citing(lot.code().text())
                .stream()
                .map(Row::value)
                .filter(count -> count.emerged().orElse(0) > 0)
                .map(Emergence::date)
                .flatMap(Optional::stream);
        return Stream.concat(scored, emerged).map(PartialDate::latest).min(LocalDate::compareTo);
    }

    private static Optional<PartialDate> dateOf(Score score) {
        return score.date();
    }
}
