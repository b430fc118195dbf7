package pippinry.nursery.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import org.osgi.service.component.annotations.ServiceScope;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import pippinry.commandline.Answer;
import pippinry.commandline.Call;
import pippinry.commandline.Subcommand;
import pippinry.model.Program;
import pippinry.model.record.Kinds;
import pippinry.nursery.internal.account.Accounts;
import pippinry.nursery.internal.account.FamilyAccount;
import pippinry.nursery.internal.account.Step;
import pippinry.nursery.internal.copies.OnlyCopy;
import pippinry.nursery.internal.copies.Takes;
import pippinry.nursery.internal.emergence.LotEmergence;
import pippinry.nursery.internal.round.Branch;
import pippinry.nursery.internal.round.RoundChecks;
import pippinry.nursery.internal.seed.ColdOfLot;
import pippinry.nursery.internal.seed.LotSeeds;
import pippinry.nursery.internal.stools.StoolYield;
import pippinry.nursery.internal.work.Crop;
import pippinry.nursery.internal.work.Look;
import pippinry.nursery.internal.work.Terms;
import pippinry.traits.CropPack;

/** Tells how everything between flower and planted tree stands. */
@Component(
        service = Subcommand.class,
        scope = ServiceScope.PROTOTYPE,
        property = {
            Subcommand.NAME + "=nursery",
            Subcommand.SUMMARY + "=branches, seed in the cold, emergence, takes, copies and the stool bed"
        })
@Command(
        description =
                "Tells which branches got one pass, what lies in the cold, what came up, what took, and who has one tree.",
        footer = {"", "Example:", "  pippinry nursery --program larkmoor --year 2025"})
public final class NurseryCommand implements Subcommand {

    @Option(names = "--year", paramLabel = "YEAR", description = "Of the pollination round; this year if left out.")
    private Optional<Integer> year = Optional.empty();

    private final List<CropPack> packs;

    @Activate
    public NurseryCommand(
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<CropPack> packs) {
        this.packs = List.copyOf(packs);
    }

    @Override
    public Answer run(Call call) throws Exception {
        Program program = call.program();
        LocalDate today = call.today();
        Terms terms = Crop.terms(program, packs);
        int spring = year.orElse(today.getYear());
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("today", today.toString());
        json.put("year", spring);
        json.put("one_pass", tags(RoundChecks.onePass(program, spring)));
        json.put(
                "not_seen_since_petal_fall",
                tags(RoundChecks.notSeenSincePetalFall(
                        program, spring, today, terms.get("bags-off").latest())));
        json.put("in_the_cold", cold(program, today, terms));
        json.put("emergence", emergence(program));
        json.put("takes", takes(program));
        json.put(
                "only_copies",
                OnlyCopy.of(program).map(plant -> plant.tag().text()).toList());
        json.put("stool_bed", stools(program));
        json.put("crosses", accounts(program));
        return Answer.of(json, words(program, json));
    }

    private static List<String> tags(List<Branch> branches) {
        return branches.stream().map(branch -> branch.tag().tag().text()).toList();
    }

    private static List<Map<String, Object>> cold(Program program, LocalDate today, Terms terms) {
        Look look = new Look(program, today, today, terms, Optional.empty(), Optional.empty());
        List<Map<String, Object>> lots = new ArrayList<>();
        program.table(Kinds.SEEDLOTS).stream()
                .map(lot -> ColdOfLot.of(look, lot))
                .filter(ColdOfLot::isInTheCold)
                .forEach(lot -> {
                    Map<String, Object> json = new LinkedHashMap<>();
                    json.put("lot", lot.lot().code().text());
                    json.put("days", lot.days());
                    json.put("target_days", lot.target().typical());
                    json.put("target_basis", lot.target().source());
                    json.put("ready", lot.ready().map(LocalDate::toString).orElse(null));
                    var seeds = LotSeeds.of(program, lot.lot());
                    json.put("seeds", seeds.isPresent() ? seeds.getAsInt() : null);
                    lots.add(json);
                });
        return lots;
    }

    private static List<Map<String, Object>> emergence(Program program) {
        List<Map<String, Object>> lots = new ArrayList<>();
        program.table(Kinds.SEEDLOTS).stream()
                .flatMap(lot -> LotEmergence.of(program, lot).stream())
                .forEach(lot -> {
                    Map<String, Object> json = new LinkedHashMap<>();
                    json.put("lot", lot.lot().code().text());
                    json.put("sown", lot.counting().sown());
                    json.put("emerged", lot.counting().emerged());
                    json.put("share", lot.share());
                    json.put("low", lot.limits().low());
                    json.put("high", lot.limits().high());
                    json.put("half_days", orNull(lot.half()));
                    json.put(
                            "final_share",
                            lot.curve().map(curve -> curve.share()).orElse(null));
                    json.put(
                            "final_low",
                            lot.curve().map(curve -> curve.shareLimits().low()).orElse(null));
                    json.put(
                            "final_high",
                            lot.curve().map(curve -> curve.shareLimits().high()).orElse(null));
                    lots.add(json);
                });
        return lots;
    }

    private static Map<String, Object> takes(Program program) {
        Map<String, Object> all = new LinkedHashMap<>();
        for (Takes.By by : Takes.By.values()) {
            all.put(
                    by.word(),
                    Takes.of(program, by).stream().map(NurseryCommand::json).toList());
        }
        return all;
    }

    private static Map<String, Object> json(Takes.Take take) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("sort", take.sort());
        json.put("taken", take.taken());
        json.put("read", take.read());
        json.put("share", take.share());
        json.put("low", take.limits().low());
        json.put("high", take.limits().high());
        return json;
    }

    private static List<Map<String, Object>> stools(Program program) {
        return StoolYield.of(program).stream().map(NurseryCommand::json).toList();
    }

    private static Map<String, Object> json(StoolYield yield) {
        StoolYield.Forecast next = yield.next();
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("stock", yield.stock());
        json.put("mothers", yield.mothers().size());
        json.put("next", next.middle());
        json.put("low", next.low());
        json.put("high", next.high());
        json.put("basis", next.basis());
        return json;
    }

    private static List<Map<String, Object>> accounts(Program program) {
        return Accounts.of(program).stream().map(NurseryCommand::json).toList();
    }

    private static Map<String, Object> json(FamilyAccount account) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("cross", account.cross().code().text());
        for (Step step : Step.values()) {
            json.put(
                    step.word().replace(' ', '_'),
                    account.count(step).map(count -> count.number()).orElse(null));
        }
        json.put(
                "counted_in_part",
                account.counts().entrySet().stream()
                        .filter(count -> !count.getValue().whole())
                        .map(count -> count.getKey().word().replace(' ', '_'))
                        .sorted()
                        .toList());
        return json;
    }

    private static Double orNull(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }

    private static String words(Program program, Map<String, Object> json) {
        StringBuilder words = new StringBuilder("Round of " + json.get("year") + "\n");
        words.append("  Branches with one pass: ")
                .append(list(json.get("one_pass")))
                .append('\n');
        words.append("  Not seen since petal fall: ").append(list(json.get("not_seen_since_petal_fall")));
        words.append("\nSeed in the cold\n");
        for (Object lot : (List<?>) json.get("in_the_cold")) {
            Map<?, ?> cold = (Map<?, ?>) lot;
            words.append("  %-14s%4d of about %d days, ready %s%n"
                    .formatted(
                            cold.get("lot"),
                            Math.round((Double) cold.get("days")),
                            Math.round((Double) cold.get("target_days")),
                            cold.get("ready")));
        }
        words.append("One living plant only: ")
                .append(list(json.get("only_copies")))
                .append('\n');
        for (Takes.Take take : Takes.of(program, Takes.By.STOCK)) {
            words.append("Take on %s: %d of %d, %d %% (%d to %d %%)%n"
                    .formatted(
                            take.sort(),
                            take.taken(),
                            take.read(),
                            Math.round(take.share() * 100),
                            Math.round(take.limits().low() * 100),
                            Math.round(take.limits().high() * 100)));
        }
        for (StoolYield yield : StoolYield.of(program)) {
            words.append("Stool bed %s: about %d liners of %d mothers next, by %s%n"
                    .formatted(
                            yield.stock(),
                            Math.round(yield.next().middle()),
                            yield.mothers().size(),
                            yield.next().basis()));
        }
        return words.toString();
    }

    private static String list(Object texts) {
        List<?> some = (List<?>) texts;
        return some.isEmpty()
                ? "none"
                : String.join(", ", some.stream().map(Object::toString).toList());
    }
}
