package pippinry.crossing.internal.rank;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pippinry.model.Program;
import pippinry.model.record.Genotype;
import pippinry.model.record.GenotypeKind;
import pippinry.model.record.Kinds;
import pippinry.model.record.PlantStatus;
import pippinry.model.record.Verdict;
import pippinry.model.value.Code;

/**
 * Which genotypes may be parents this spring.
 *
 * <p>Cultivars, species, selections and sports, and seedlings decided to be used as parent, copied or advanced; never rootstocks.
 * A seed parent needs a living plant; a pollen parent a living plant or pollen left. A program that keeps no plants at all
 * offers every one.
 */
public final class Candidates {

    private final List<Code<Genotype>> seedParents = new ArrayList<>();
    private final List<Code<Genotype>> pollenParents = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    public Candidates(Program program) {
        Set<Code<Genotype>> living = new HashSet<>();
        program.table(Kinds.PLANTS).forEach(row -> {
            boolean alive = row.value().status().orElse(PlantStatus.ALIVE) == PlantStatus.ALIVE;
            row.value().genotype().filter(any -> alive).ifPresent(living::add);
        });
        Set<Code<Genotype>> pollen = new HashSet<>();
        program.table(Kinds.POLLEN).forEach(row -> {
            boolean left = row.value().vials().orElse(0) > 0;
            row.value().genotype().filter(any -> left).ifPresent(pollen::add);
        });
        boolean anyPlants = program.table(Kinds.PLANTS).size() > 0;
        int without = 0;
        for (Code<Genotype> candidate : chosen(program)) {
            boolean here = !anyPlants || living.contains(candidate);
            if (here) {
                seedParents.add(candidate);
            }
            if (here || pollen.contains(candidate)) {
                pollenParents.add(candidate);
            } else {
                without++;
            }
        }
        if (without > 0) {
            notes.add(without + " kinds that could be parents have no living plant here and no pollen left;"
                    + " they are left out.");
        }
    }

    public List<Code<Genotype>> seedParents() {
        return List.copyOf(seedParents);
    }

    public List<Code<Genotype>> pollenParents() {
        return List.copyOf(pollenParents);
    }

    public List<String> notes() {
        return List.copyOf(notes);
    }

    private static Set<Code<Genotype>> chosen(Program program) {
        Map<Code<Genotype>, Verdict> last = new HashMap<>();
        program.table(Kinds.DECISIONS)
                .forEach(row -> last.put(row.value().genotype(), row.value().decision()));
        Set<Code<Genotype>> chosen = new LinkedHashSet<>();
        program.table(Kinds.GENOTYPES).forEach(row -> {
            if (mayBeParent(row.value(), last.get(row.value().code()))) {
                chosen.add(row.value().code());
            }
        });
        return chosen;
    }

    private static boolean mayBeParent(Genotype genotype, Verdict verdict) {
        GenotypeKind kind = genotype.kind().orElse(GenotypeKind.SEEDLING);
        boolean asked = verdict == Verdict.PARENT || verdict == Verdict.COPY || verdict == Verdict.ADVANCE;
        return switch (kind) {
            case ROOTSTOCK -> false;
            case SEEDLING -> asked;
            case CULTIVAR, SPECIES, SELECTION, SPORT -> verdict != Verdict.DISCARD;
        };
    }
}
