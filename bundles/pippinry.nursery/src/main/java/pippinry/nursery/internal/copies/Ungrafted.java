package pippinry.nursery.internal.copies;

import java.util.List;
import pippinry.model.Program;
import pippinry.model.record.Plant;
import pippinry.model.record.PlantKind;

/** Living seedlings in their pots: on their own roots, without a place, and without any other plant of theirs. */
public final class Ungrafted {

    private Ungrafted() {}

    public static List<Plant> of(Program program) {
        Roster roster = Roster.of(program);
        return roster.living().values().stream()
                .filter(plants -> plants.size() == 1)
                .map(plants -> plants.get(0))
                .filter(plant ->
                        plant.kind().filter(kind -> kind == PlantKind.OWN_ROOT).isPresent())
                .filter(plant -> !roster.hasPlace(plant))
                .toList();
    }
}
