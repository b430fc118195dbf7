package pippinry.nursery.internal.seed;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import pippinry.model.Program;
import pippinry.model.Row;
import pippinry.model.record.Kinds;
import pippinry.model.record.LotMove;
import pippinry.model.record.SeedLot;

/** How many seeds a lot holds: those counted in it, or put in, less those put into others. */
public final class LotSeeds {

    private LotSeeds() {}

    /** Empty if nobody counted them. */
    public static OptionalInt of(Program program, SeedLot lot) {
        OptionalInt first = lot.seedsFull().isPresent() ? lot.seedsFull() : movedIn(program, lot);
        return first.isPresent() ? OptionalInt.of(Math.max(0, first.getAsInt() - movedOut(program, lot))) : first;
    }

    /** Seeds put in from other lots; empty if none were. */
    static OptionalInt movedIn(Program program, SeedLot lot) {
        List<LotMove> moves = moves(program, lot).stream()
                .filter(move -> move.to().equals(Optional.of(lot.code())))
                .toList();
        return moves.isEmpty()
                ? OptionalInt.empty()
                : OptionalInt.of(
                        moves.stream().mapToInt(move -> move.seeds().orElse(0)).sum());
    }

    private static int movedOut(Program program, SeedLot lot) {
        return moves(program, lot).stream()
                .filter(move -> move.from().equals(lot.code()))
                .mapToInt(move -> move.seeds().orElse(0))
                .sum();
    }

    private static List<LotMove> moves(Program program, SeedLot lot) {
        return program.table(Kinds.LOTMOVES).citing(lot.code().text()).stream()
                .map(Row::value)
                .toList();
    }
}
