package pippinry.crossing.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
import pippinry.commandline.CallRefused;
import pippinry.commandline.Subcommand;
import pippinry.crossing.internal.rank.Beat;
import pippinry.crossing.internal.rank.PairRanking;
import pippinry.crossing.internal.rank.RankedPair;
import pippinry.crossing.internal.rank.RankedPairText;
import pippinry.crossing.internal.rank.Wishes;
import pippinry.model.Program;
import pippinry.model.ask.Relationship;
import pippinry.model.record.Direction;
import pippinry.model.record.Genotype;
import pippinry.model.record.Goal;
import pippinry.model.record.Kinds;
import pippinry.model.value.Code;
import pippinry.traits.CropPack;
import pippinry.traits.TraitDefinition;

/** Ranks the possible pairs for the goals of a program. */
@Command(
        name = "crosses",
        description =
                "Ranks the possible pairs for the goals: fertility, bloom, share of wanted seedlings, relationship,"
                        + " flowers to pollinate.",
        footer = {
            "",
            "Example: the ten best pairs with Fiesta as seed parent:",
            "  pippinry crosses --program larkmoor --seed-parent FIE --limit 10"
        })
@Component(
        service = Subcommand.class,
        scope = ServiceScope.PROTOTYPE,
        property = {Subcommand.NAME + "=crosses", Subcommand.SUMMARY + "=which pairs to cross this spring, and why"})
public final class CrossesCommand implements Subcommand {

    @Option(names = "--seed-parent", paramLabel = "CODE", description = "only this seed parent; may be given again")
    List<String> seedParents = new ArrayList<>();

    @Option(names = "--pollen-parent", paramLabel = "CODE", description = "only this pollen parent; may be given again")
    List<String> pollenParents = new ArrayList<>();

    @Option(names = "--sure", defaultValue = "0.95", paramLabel = "P", description = "how sure to be (default 0.95)")
    String sure;

    @Option(
            names = "--atleast",
            defaultValue = "1",
            paramLabel = "K",
            description = "of how many wanted seedlings (default 1)")
    String atLeast;

    @Option(
            names = "--family",
            defaultValue = "50",
            paramLabel = "N",
            description = "seedlings to plan where the share of wanted ones is not known (default 50)")
    String family;

    @Option(names = "--limit", defaultValue = "25", paramLabel = "N", description = "pairs to show (default 25)")
    String limit;

    @Option(names = "--all", description = "show pairs that cannot fertilise each other as well")
    boolean all;

    @Option(names = "--beat", paramLabel = "TRAIT", description = "also tell the chance to beat a check in this trait")
    String beat;

    @Option(names = "--check", paramLabel = "CODE", description = "the check to beat")
    String check;

    @Option(names = "--by", defaultValue = "0", paramLabel = "X", description = "by this much (default 0)")
    String by;

    private final Packs packs;
    private final Optional<Relationship> relationship;

    @Activate
    public CrossesCommand(
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<CropPack> packs,
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    Relationship relationship) {
        this.packs = new Packs(packs);
        this.relationship = Optional.ofNullable(relationship);
    }

    @Override
    public Answer run(Call call) throws CallRefused {
        Program program = call.program();
        Wishes wishes = new Wishes(
                codes("--seed-parent", seedParents, program),
                codes("--pollen-parent", pollenParents, program),
                Numbers.inside("--sure", sure),
                (int) Numbers.whole("--atleast", atLeast, 1),
                (int) Numbers.whole("--family", family, 1),
                (int) Numbers.whole("--limit", limit, 1),
                all,
                beat(program));
        PairRanking ranking = new PairRanking(program, packs.of(program), relationship, wishes);
        List<RankedPair> pairs = ranking.best(done -> call.progress("Judging pairs", done));
        List<String> notes = ranking.notes();
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("pairs", pairs.stream().map(RankedPairText::json).toList());
        json.put("notes", notes);
        return Answer.of(json, RankedPairText.words(pairs, notes));
    }

    private Optional<Beat> beat(Program program) throws CallRefused {
        if (beat == null) {
            return Optional.empty();
        }
        if (check == null) {
            throw new CallRefused("--beat " + beat + ": say with --check which check to beat");
        }
        boolean less = program.find(Kinds.GOALS, Code.<Goal>of(beat))
                .flatMap(Goal::direction)
                .or(() -> packs.of(program).flatMap(pack -> pack.trait(beat)).flatMap(TraitDefinition::direction))
                .equals(Optional.of(Direction.LESS));
        double amount = Numbers.part("--by", by);
        return Optional.of(
                new Beat(beat, codes("--check", List.of(check), program).get(0), !less, amount));
    }

    private static List<Code<Genotype>> codes(String option, List<String> texts, Program program) throws CallRefused {
        List<Code<Genotype>> codes = new ArrayList<>();
        for (String text : texts) {
            Code<Genotype> code = Code.of(text.strip());
            if (program.find(Kinds.GENOTYPES, code).isEmpty()) {
                throw Numbers.refused(option, text, "the code of a genotype on file");
            }
            codes.add(code);
        }
        return codes;
    }
}
