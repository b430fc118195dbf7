package pippinry.nursery.internal.account;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Function;
import pippinry.model.Program;
import pippinry.model.Row;
import pippinry.model.record.Cross;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.record.Pollination;
import pippinry.model.record.PollinationKind;
import pippinry.model.record.SeedLot;
import pippinry.model.value.Code;
import pippinry.nursery.internal.account.FamilyAccount.Count;
import pippinry.nursery.internal.copies.Roster;
import pippinry.nursery.internal.seed.LotSeeds;

/**
 * The account of every cross. Flowers and fruits are those of its tagged branches without the controls; seeds those of its
 * lots, each counted where it was first; the living are its numbered seedlings with at least one living plant.
 */
public final class Accounts {

    private static final List<PollinationKind> CONTROLS =
            List.of(PollinationKind.CONTROL_OPEN, PollinationKind.CONTROL_NO_POLLEN);

    private final Program program;
    private final Map<String, int[]> seedlings = new HashMap<>();

    private Accounts(Program program) {
        this.program = program;
        program.table(Kinds.GENOTYPES).forEach(row -> addSeedling(row.value()));
    }

    /** Crosses in the order of entry; those of which nothing was counted are left out. */
    public static List<FamilyAccount> of(Program program) {
        Accounts accounts = new Accounts(program);
        return program.table(Kinds.CROSSES).stream()
                .map(accounts::account)
                .filter(account -> !account.isEmpty())
                .toList();
    }

    /** Numbered and living seedlings of each cross. */
    private void addSeedling(Genotype genotype) {
        String number = genotype.code().text();
        int cut = number.lastIndexOf('-');
        if (cut > 0 && number.substring(cut + 1).matches("\\d+")) {
            int[] counts = seedlings.computeIfAbsent(number.substring(0, cut), any -> new int[2]);
            counts[0]++;
            counts[1] += Roster.of(program).living(genotype.code()).isEmpty() ? 0 : 1;
        }
    }

    private FamilyAccount account(Cross cross) {
        List<Pollination> branches = branches(cross.code());
        List<SeedLot> lots = lots(cross.code());
        Map<Step, Count> counts = new EnumMap<>(Step.class);
        put(counts, Step.FLOWERS, branches, Pollination::flowers);
        put(counts, Step.SET, branches, branch -> fruits(branch, branch.setFruits()));
        put(counts, Step.FRUITS, branches, branch -> fruits(branch, branch.harvestedFruits()));
        put(
                counts,
                Step.SEEDS,
                lots.stream().filter(lot -> !LotSeeds.isSplitOff(program, lot)).toList(),
                SeedLot::seedsFull);
        put(counts, Step.SOWN, lots, SeedLot::sown);
        put(counts, Step.EMERGED, lots, SeedLot::emerged);
        closed(counts, lots);
        put(counts, Step.POTTED, lots, SeedLot::potted);
        int[] numbered = seedlings.get(cross.code().text());
        if (numbered != null) {
            counts.putIfAbsent(Step.POTTED, new Count(numbered[0], true));
            counts.put(Step.LIVING, new Count(numbered[1], true));
        }
        return new FamilyAccount(cross, counts);
    }

    /** A branch that was lost with a cause bore nothing. */
    private static OptionalInt fruits(Pollination branch, OptionalInt counted) {
        return counted.isEmpty() && !branch.lossCause().isBlank() ? OptionalInt.of(0) : counted;
    }

    /** While seedlings are not potted more may come up. */
    private static void closed(Map<Step, Count> counts, List<SeedLot> lots) {
        if (lots.stream().anyMatch(lot -> lot.potted().isEmpty())) {
            counts.computeIfPresent(Step.EMERGED, (step, count) -> new Count(count.number(), false));
        }
    }

    private static <R> void put(Map<Step, Count> counts, Step step, List<R> rows, Function<R, OptionalInt> count) {
        List<Integer> known = rows.stream()
                .map(count)
                .filter(OptionalInt::isPresent)
                .map(OptionalInt::getAsInt)
                .toList();
        if (!known.isEmpty()) {
            int sum = known.stream().mapToInt(Integer::intValue).sum();
            counts.put(step, new Count(sum, known.size() == rows.size()));
        }
    }

    private List<Pollination> branches(Code<Cross> cross) {
        return program.table(Kinds.POLLINATIONS).citing(cross.text()).stream()
                .map(Row::value)
                .filter(branch -> branch.cross().filter(cross::equals).isPresent())
                .filter(branch -> branch.kind().filter(CONTROLS::contains).isEmpty())
                .toList();
    }

    private List<SeedLot> lots(Code<Cross> cross) {
        return program.table(Kinds.SEEDLOTS).citing(cross.text()).stream()
                .map(Row::value)
                .filter(lot -> lot.cross().filter(cross::equals).isPresent())
                .toList();
    }
}
