package pippinry.nursery.internal.seed;

import java.time.LocalDate;
import java.util.OptionalInt;
import java.util.stream.Stream;
import pippinry.model.record.Kinds;
import pippinry.model.record.SeedLot;
import pippinry.model.value.PartialDate;
import pippinry.nursery.internal.work.Counted;
import pippinry.nursery.internal.work.Look;

/** Which seed lots are still at work. */
final class Lots {

    /** A lot that is neither cold, sown nor potted two years after harvest is a reserve, not work left undone. */
    private static final int AT_WORK_DAYS = 550;

    private Lots() {}

    static Stream<SeedLot> all(Look look) {
        return look.program().table(Kinds.SEEDLOTS).stream();
    }

    static boolean isRecent(Look look, SeedLot lot) {
        return lot.harvestedOn()
                .map(PartialDate::latest)
                .filter(day -> look.isRecent(day, AT_WORK_DAYS))
                .isPresent();
    }

    static boolean isSown(SeedLot lot) {
        return lot.sownOn().isPresent() || lot.sown().orElse(0) > 0;
    }

    /** Sown on a known day of this season, and not yet given up. */
    static boolean isGrowing(Look look, SeedLot lot, long days) {
        return lot.sownOn()
                .flatMap(PartialDate::day)
                .filter(day -> look.isRecent(day, days))
                .isPresent();
    }

    static LocalDate sown(SeedLot lot) {
        return lot.sownOn().orElseThrow().latest();
    }

    /** The cross on the lot's label, else the lot's own code. */
    static String batch(SeedLot lot) {
        return lot.code().text();
    }

    static String seeds(Look look, SeedLot lot) {
        OptionalInt seeds = LotSeeds.of(look.program(), lot);
        return seeds.isPresent() ? Counted.of(seeds.getAsInt(), "full seed") : "seeds not counted";
    }
}
