package pippinry.nursery.internal.seed;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import pippinry.model.Program;
import pippinry.model.Row;
import pippinry.model.record.Kinds;
import pippinry.model.record.LotMove;
import pippinry.model.record.SeedLot;

/**
 * How many full seeds a lot holds: those of its own fruit and those put in, less those put into others. In a lot without
 * fruit of its own a count is a count of what was put in.
 */
public final class LotSeeds {

    private LotSeeds() {}

    /** Empty if nobody counted them. */
    public static OptionalInt of(Program program, SeedLot lot) {
        OptionalInt in = movedIn(program, lot);
        if (lot.seedsFull().isEmpty() && in.isEmpty()) {
            return in;
        }
        int first = isSplitOff(program, lot)
                ? lot.seedsFull().orElse(in.orElse(0))
                : lot.seedsFull().orElse(0) + in.orElse(0);
        return OptionalInt.of(Math.max(0, first - movedOut(program, lot)));
    }

    /** Whether all its seeds came from other lots. */
    public static boolean isSplitOff(Program program, SeedLot lot) {
        return lot.fruits().isEmpty() && movedIn(program, lot).isPresent();
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
