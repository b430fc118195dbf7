package pippinry.labels.internal.wanted;

import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import pippinry.model.Program;
import pippinry.model.record.Kinds;
import pippinry.model.record.Occupancy;
import pippinry.model.record.Plant;
import pippinry.model.record.PlantStatus;
import pippinry.model.value.Code;

/** Where each plant stands now, and the order in which a person walks past them. */
final class Standing {
    private final Map<Code<Plant>, Occupancy> places = new HashMap<>();

    private Standing(Program program) {
        program.table(Kinds.PLACES).stream()
                .filter(place -> place.to().isEmpty())
                .forEach(place -> places.put(place.plant(), place));
    }

    static Standing of(Program program) {
        return program.derived(Standing.class, Standing::new);
    }

    Optional<Occupancy> place(Plant plant) {
        return Optional.ofNullable(places.get(plant.tag()));
    }

    static boolean isAlive(Plant plant) {
        return plant.status().map(status -> status == PlantStatus.ALIVE).orElse(true)
                && plant.endedOn().isEmpty();
    }

    /** By block, row and place; what has none comes last, by number. */
    Comparator<Plant> walking() {
        return Comparator.comparing((Plant plant) -> place(plant).isEmpty())
                .thenComparing(
                        plant ->
                                of(plant, place -> place.block().map(Code::text).orElse("")),
                        NaturalOrder.BY_NUMBER)
                .thenComparing(plant -> of(plant, Occupancy::row), NaturalOrder.BY_NUMBER)
                .thenComparing(plant -> of(plant, Occupancy::place), NaturalOrder.BY_NUMBER)
                .thenComparing(plant -> plant.tag().text(), NaturalOrder.BY_NUMBER);
    }

    private String of(Plant plant, Function<Occupancy, String> part) {
        return place(plant).map(part).orElse("");
    }
}
