package pippinry.nursery.internal.copies;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pippinry.model.record.Plant;
import pippinry.model.record.PlantKind;
import pippinry.model.value.PartialDate;
import pippinry.nursery.internal.work.Counted;
import pippinry.nursery.internal.work.Hemisphere;
import pippinry.nursery.internal.work.Look;

/**
 * Seedlings of one cross on their own roots, potted this season or last, that have no place on the ground yet and no graft
 * that could stand there for them.
 *
 * @param year of the season in which they were potted
 */
record PottedFamily(String batch, int year, List<Plant> plants) {

    static Stream<PottedFamily> of(Look look) {
        Hemisphere hemisphere = look.hemisphere();
        Roster roster = Roster.of(look.program());
        Map<String, Map<Integer, List<Plant>>> families = new TreeMap<>();
        roster.living().values().stream()
                .flatMap(List::stream)
                .filter(plant ->
                        plant.kind().filter(kind -> kind == PlantKind.OWN_ROOT).isPresent())
                .filter(plant -> !roster.hasPlace(plant))
                .filter(plant -> roster.living(plant.genotype().orElseThrow()).size() == 1)
                .filter(plant -> isOfSeason(look, plant))
                .forEach(plant -> families.computeIfAbsent(
                                Sitting.family(
                                        look.program(),
                                        plant.genotype().orElseThrow().text()),
                                any -> new TreeMap<>())
                        .computeIfAbsent(hemisphere.crossYear(potted(plant)), any -> new ArrayList<>())
                        .add(plant));
        return families.entrySet().stream().flatMap(batch -> batch.getValue().entrySet().stream()
                .map(year -> new PottedFamily(batch.getKey(), year.getKey(), year.getValue())));
    }

    private static java.time.LocalDate potted(Plant plant) {
        return plant.madeOn().orElseThrow().latest();
    }

    private static boolean isOfSeason(Look look, Plant plant) {
        int now = look.hemisphere().crossYear(look.today());
        return plant.madeOn()
                .map(PartialDate::latest)
                .map(look.hemisphere()::crossYear)
                .filter(year -> IntStream.rangeClosed(now - 1, now).anyMatch(known -> known == year))
                .isPresent();
    }

    List<String> numbers() {
        return plants.stream().map(plant -> plant.tag().text()).toList();
    }

    String count() {
        return Counted.of(plants.size(), "seedling");
    }
}
