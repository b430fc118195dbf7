package pippinry.nursery.internal.seed;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pippinry.model.Program;
import pippinry.model.Row;
import pippinry.model.record.Emergence;
import pippinry.model.record.Kinds;
import pippinry.model.record.SeedLot;
import pippinry.model.value.Code;

/** The dated counts of what has emerged of a lot. */
public final class EmergenceCounts {

    private EmergenceCounts() {}

    /** In the order of their days. */
    public static List<Emergence> of(Program program, Code<SeedLot> lot) {
        return program.table(Kinds.EMERGENCE).citing(lot.text()).stream()
                .map(Row::value)
                .filter(count -> count.lot().equals(lot))
                .filter(count -> count.date().isPresent() && count.emerged().isPresent())
                .sorted(Comparator.comparing(EmergenceCounts::day))
                .toList();
    }

    static Optional<Emergence> last(Program program, Code<SeedLot> lot) {
        List<Emergence> counts = of(program, lot);
        return counts.isEmpty() ? Optional.empty() : Optional.of(counts.get(counts.size() - 1));
    }

    public static LocalDate day(Emergence count) {
        return count.date().orElseThrow().latest();
    }
}
