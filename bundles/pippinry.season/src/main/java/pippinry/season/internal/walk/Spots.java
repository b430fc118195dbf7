package pippinry.season.internal.walk;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import pippinry.model.Program;
import pippinry.model.Row;
import pippinry.model.record.Block;
import pippinry.model.record.Kinds;
import pippinry.model.record.Occupancy;
import pippinry.model.record.Plant;
import pippinry.model.record.PlantStatus;
import pippinry.model.record.Pollination;
import pippinry.model.value.Code;

/** Where the numbers of a task stand: a plant at its place, a limb on its host, a branch on its tree. */
final class Spots {

    private final Program program;
    private final Map<Code<Block>, Integer> blocks = new HashMap<>();

    Spots(Program program) {
        this.program = program;
        program.table(Kinds.BLOCKS).stream().forEach(block -> blocks.put(block.block(), blocks.size()));
    }

    /** All places of what the number names; a genotype may stand at several, a pot or a lot at none. */
    List<Spot> of(String number) {
        Optional<Plant> tree = program.find(Kinds.POLLINATIONS, Code.<Pollination>of(number))
                .flatMap(Pollination::plant)
                .or(() -> Optional.of(Code.of(number)))
                .flatMap(plant -> program.find(Kinds.PLANTS, plant));
        return tree.map(Stream::of)
                .orElseGet(() -> living(number))
                .flatMap(plant -> spot(plant, 0).stream())
                .toList();
    }

    private Stream<Plant> living(String genotype) {
        return program.table(Kinds.PLANTS).citing(genotype).stream()
                .map(Row::value)
                .filter(plant -> plant.genotype()
                        .filter(code -> code.text().equals(genotype))
                        .isPresent())
                .filter(plant -> plant.status().orElse(PlantStatus.ALIVE) == PlantStatus.ALIVE);
    }

    /** A limb may sit on a limb, but not for ever. */
    private Optional<Spot> spot(Plant plant, int hosts) {
        Optional<Spot> own = program.table(Kinds.PLACES).citing(plant.tag().text()).stream()
                .map(Row::value)
                .filter(place -> place.plant().equals(plant.tag()) && place.to().isEmpty())
                .map(this::spot)
                .findFirst();
        return own.isPresent() || hosts > 5
                ? own
                : plant.host().flatMap(host -> program.find(Kinds.PLANTS, host)).flatMap(host -> spot(host, hosts + 1));
    }

    private Spot spot(Occupancy place) {
        int order = place.block()
                .map(block -> blocks.getOrDefault(block, blocks.size()))
                .orElse(blocks.size());
        return new Spot(order, place.block().map(Code::text).orElse(""), place.row(), place.place());
    }
}
