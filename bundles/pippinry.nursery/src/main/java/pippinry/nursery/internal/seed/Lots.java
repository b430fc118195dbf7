package pippinry.nursery.internal.seed;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import pippinry.model.Row;
import pippinry.model.record.Kinds;
import pippinry.model.record.LotMove;
import pippinry.model.record.SeedLot;
import pippinry.model.value.PartialDate;
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

    /** Full seeds as counted, else those that were put in from other lots; empty if nobody knows. */
    static OptionalInt seedsOf(Look look, SeedLot lot) {
        return lot.seedsFull().isPresent() ? lot.seedsFull() : movedIn(look, lot);
    }

    /** Seeds put in from other lots; empty if none were. */
    static OptionalInt movedIn(Look look, SeedLot lot) {
        List<LotMove> moves = look
                .program()
                .table(Kinds.LOTMOVES)
                .citing(lot.code().text())
                .stream()
                .map(Row::value)
                .filter(move -> move.to().equals(Optional.of(lot.code())))
                .toList();
        return moves.isEmpty()
                ? OptionalInt.empty()
                : OptionalInt.of(
                        moves.stream().mapToInt(move -> move.seeds().orElse(0)).sum());
    }

    static String seeds(Look look, SeedLot lot) {
        OptionalInt seeds = seedsOf(look, lot);
        return seeds.isPresent() ? seeds.getAsInt() + " full seeds" : "seeds not counted";
    }
}
