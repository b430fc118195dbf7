package pippinry.lineage.internal.kin;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import pippinry.model.Program;
import pippinry.model.record.Cross;
import pippinry.model.record.Kinds;

/** The parents of the latest crosses. */
public final class ParentsInUse {

    private ParentsInUse() {}

    /** Codes, those of the latest cross first. */
    public static List<String> of(Program program, int most) {
        Set<String> parents = new LinkedHashSet<>();
        program.table(Kinds.CROSSES).stream()
                .sorted(Comparator.comparing(ParentsInUse::year)
                        .thenComparing(cross -> cross.code().text())
                        .reversed())
                .forEach(cross -> add(cross, parents));
        return parents.stream()
                .filter(code -> program.table(Kinds.GENOTYPES).find(code).isPresent())
                .limit(most)
                .toList();
    }

    private static void add(Cross cross, Set<String> parents) {
        cross.seedParent().ifPresent(seed -> parents.add(seed.text()));
        cross.pollenParent().candidates().forEach(pollen -> parents.add(pollen.text()));
    }

    private static int year(Cross cross) {
        return cross.year().map(date -> date.year().getValue()).orElse(0);
    }
}
