package pippinry.crossing.internal.rates;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import pippinry.model.Program;
import pippinry.model.ask.HouseRates.Step;
import pippinry.model.record.Cross;
import pippinry.model.record.Genotype;
import pippinry.model.record.Graft;
import pippinry.model.record.Kinds;
import pippinry.model.record.Plant;
import pippinry.model.record.PlantStatus;
import pippinry.model.record.Pollination;
import pippinry.model.record.PollinationKind;
import pippinry.model.record.SeedLot;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;
import pippinry.statistics.proportions.Count;

/**
 * What the program counted at each step, by seed parent (by stock for grafts) and year.
 *
 * <p>Only hand pollinations with their flowers written down count for the set. Seeds count against the ovules a fruit can
 * hold, so that they are a share like the others.
 */
public final class OwnCounts {

    /** Where seed parent or stock is not known. */
    public static final String UNKNOWN_GROUP = "?";

    private final Program program;
    private final int ovules;
    private final Map<Step, Map<String, Map<Integer, long[]>>> counts = new EnumMap<>(Step.class);

    /**
     * Counts.
     *
     * @param ovules seeds that a fruit can hold at most
     */
    public OwnCounts(Program program, int ovules) {
        this.program = program;
        this.ovules = ovules;
        program.table(Kinds.POLLINATIONS).forEach(row -> count(row.value()));
        program.table(Kinds.SEEDLOTS).forEach(row -> count(row.value()));
        program.table(Kinds.GRAFTS).forEach(row -> count(row.value()));
        LocalDate now = LocalDate.ofInstant(program.time(), ZoneOffset.UTC);
        planted(program).forEach((plant, since) -> count(plant, since, now));
    }

    /** Batches of each group for a step. */
    public Map<String, List<Count>> groups(Step step) {
        Map<String, List<Count>> groups = new TreeMap<>();
        counts.getOrDefault(step, Map.of()).forEach((group, years) -> {
            List<Count> batches = new ArrayList<>();
            years.values().forEach(year -> batches.add(new Count(year[0], year[1])));
            groups.put(group, batches);
        });
        return groups;
    }

    private void count(Pollination pollination) {
        Optional<Cross> cross = pollination.cross().flatMap(code -> program.find(Kinds.CROSSES, code));
        OptionalInt fruits =
                pollination.harvestedFruits().isPresent() ? pollination.harvestedFruits() : pollination.setFruits();
        boolean byHand =
                pollination.kind().filter(kind -> kind == PollinationKind.HAND).isPresent();
        if (byHand && pollination.flowers().isPresent() && fruits.isPresent()) {
            add(
                    Step.SET,
                    seedParent(cross),
                    year(cross),
                    fruits.getAsInt(),
                    pollination.flowers().getAsInt());
        }
    }

    private void count(SeedLot lot) {
        Optional<Cross> cross = lot.cross().flatMap(code -> program.find(Kinds.CROSSES, code));
        if (lot.fruits().isPresent() && lot.seedsFull().isPresent()) {
            long holds = (long) ovules * lot.fruits().getAsInt();
            add(
                    Step.SEEDS_PER_FRUIT,
                    seedParent(cross),
                    year(cross),
                    lot.seedsFull().getAsInt(),
                    holds);
        }
        if (lot.sown().isPresent() && lot.emerged().isPresent()) {
            add(
                    Step.EMERGENCE,
                    seedParent(cross),
                    year(cross),
                    lot.emerged().getAsInt(),
                    lot.sown().getAsInt());
        }
        if (lot.emerged().isPresent() && lot.potted().isPresent()) {
            add(
                    Step.POTTING,
                    seedParent(cross),
                    year(cross),
                    lot.potted().getAsInt(),
                    lot.emerged().getAsInt());
        }
    }

    private void count(Graft graft) {
        boolean took = graft.result().startsWith("t");
        if (took || graft.result().startsWith("f")) {
            String stock = program.find(Kinds.PLANTS, graft.plant())
                    .map(Plant::rootstock)
                    .filter(text -> !text.isBlank())
                    .orElse(UNKNOWN_GROUP);
            add(Step.TAKE, stock, yearOf(graft.date()), took ? 1 : 0, 1);
        }
    }

    /** First day of each plant in a place, as far as days are known. */
    private static Map<Code<Plant>, LocalDate> planted(Program program) {
        Map<Code<Plant>, LocalDate> since = new TreeMap<>();
        program.table(Kinds.PLACES).forEach(row -> row.value()
                .from()
                .ifPresent(from -> since.merge(
                        row.value().plant(), from.earliest(), (one, other) -> one.isBefore(other) ? one : other)));
        return since;
    }

    /**
     * Field: whether a tree stands two years after planting. Grubbed and given trees prove nothing, nor do trees planted
     * less than two years ago.
     */
    private void count(Code<Plant> code, LocalDate since, LocalDate now) {
        Optional<Plant> plant = program.find(Kinds.PLANTS, code);
        PlantStatus status = plant.flatMap(Plant::status).orElse(PlantStatus.ALIVE);
        Optional<LocalDate> ended = plant.flatMap(Plant::endedOn).map(PartialDate::earliest);
        LocalDate test = since.plusYears(2);
        boolean died = (status == PlantStatus.DEAD || status == PlantStatus.LOST)
                && ended.filter(end -> end.isBefore(test)).isPresent();
        boolean stood = status == PlantStatus.ALIVE
                ? !test.isAfter(now)
                : ended.filter(end -> !end.isBefore(test)).isPresent();
        if (died || stood) {
            Optional<Code<Genotype>> seedParent = plant.flatMap(Plant::genotype)
                    .flatMap(genotype -> program.find(Kinds.GENOTYPES, genotype))
                    .flatMap(Genotype::seedParent);
            add(Step.FIELD, seedParent.map(Code::text).orElse(UNKNOWN_GROUP), since.getYear(), died ? 0 : 1, 1);
        }
    }

    /** More successes than trials are a slip of the pen or another count; they count as all. */
    private void add(Step step, String group, int year, long successes, long trials) {
        if (trials <= 0) {
            return;
        }
        long[] sum = counts.computeIfAbsent(step, any -> new TreeMap<>())
                .computeIfAbsent(group, any -> new HashMap<>())
                .computeIfAbsent(year, any -> new long[2]);
        sum[0] += Math.min(successes, trials);
        sum[1] += trials;
    }

    private static String seedParent(Optional<Cross> cross) {
        return cross.flatMap(Cross::seedParent).map(Code::text).orElse(UNKNOWN_GROUP);
    }

    private static int year(Optional<Cross> cross) {
        return yearOf(cross.flatMap(Cross::year));
    }

    private static int yearOf(Optional<PartialDate> date) {
        return date.map(known -> known.year().getValue()).orElse(0);
    }
}
