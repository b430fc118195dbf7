package pippinry.nursery.internal.copies;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pippinry.model.Program;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.record.Plant;
import pippinry.model.record.PlantKind;
import pippinry.model.record.PlantStatus;
import pippinry.model.value.Code;

/**
 * Which plants live, and which of them have a place. Read once from all plants and places: work proportional to both. A limb
 * whose host is dead is dead, whatever its own record says.
 */
public final class Roster {

    private final Map<Code<Genotype>, List<Plant>> living = new HashMap<>();
    private final Set<Code<Plant>> placed = new HashSet<>();
    private final List<Plant> stools = new ArrayList<>();

    private Roster() {}

    public static Roster of(Program program) {
        return program.derived(Roster.class, Roster::read);
    }

    /** Living plants of the genotype; empty if none is left. */
    public List<Plant> living(Code<Genotype> genotype) {
        return living.getOrDefault(genotype, List.of());
    }

    Map<Code<Genotype>, List<Plant>> living() {
        return living;
    }

    /** Whether it stands, or once stood, somewhere on the ground. */
    boolean hasPlace(Plant plant) {
        return placed.contains(plant.tag());
    }

    /** Living mothers of the stool bed. */
    public List<Plant> stools() {
        return stools;
    }

    private static Roster read(Program program) {
        Roster roster = new Roster();
        program.table(Kinds.PLACES).forEach(row -> roster.placed.add(row.value().plant()));
        program.table(Kinds.PLANTS).forEach(row -> roster.add(program, row.value()));
        return roster;
    }

    private void add(Program program, Plant plant) {
        if (lives(plant) && hostLives(program, plant)) {
            plant.genotype().ifPresent(genotype -> living.computeIfAbsent(genotype, any -> new ArrayList<>())
                    .add(plant));
            if (plant.kind().filter(kind -> kind == PlantKind.STOOL).isPresent()) {
                stools.add(plant);
            }
        }
    }

    /** By its own record alone. */
    public static boolean lives(Plant plant) {
        return plant.status().orElse(PlantStatus.ALIVE) == PlantStatus.ALIVE
                && plant.endedOn().isEmpty();
    }

    private static boolean hostLives(Program program, Plant plant) {
        return plant.host()
                .flatMap(host -> program.find(Kinds.PLANTS, host))
                .map(Roster::lives)
                .orElse(true);
    }
}
