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
import pippinry.crossing.internal.allocate.Limits;
import pippinry.crossing.internal.allocate.OptionsOfProgram;
import pippinry.crossing.internal.allocate.PlanOfCrosses;
import pippinry.crossing.internal.plan.MakePlan;
import pippinry.crossing.internal.rank.PairRanking;
import pippinry.crossing.internal.rank.RankedPair;
import pippinry.crossing.internal.rank.Wishes;
import pippinry.crossing.internal.rates.RateBook;
import pippinry.model.EditRefused;
import pippinry.model.Program;
import pippinry.model.ask.PlaceCapacity;
import pippinry.model.ask.Relationship;
import pippinry.traits.CropPack;

/** Plans the crosses of a spring for the ground and the flowers there are. */
@Command(
        name = "plan",
        description =
                "Chooses crosses, and the seedlings and flowers of each, so that the best few seedlings will be worth most.",
        footer = {
            "",
            "Example: 250 places, 600 flowers at most, for the three best seedlings:",
            "  pippinry plan --program larkmoor --places 250 --flowers 600 --best 3",
            "With --make the crosses are written down with their numbers and tags."
        })
@Component(
        service = Subcommand.class,
        scope = ServiceScope.PROTOTYPE,
        property = {
            Subcommand.NAME + "=plan",
            Subcommand.SUMMARY + "=which crosses, how many seedlings and flowers, for the ground there will be"
        })
public final class PlanCommand implements Subcommand {

    /** Seedlings are planted in the third year after the cross (calendar of the crop pack). */
    private static final int YEARS_TO_PLANTING = 3;

    @Option(names = "--places", paramLabel = "N", description = "places there will be for the seedlings")
    String places;

    @Option(
            names = "--flowers",
            defaultValue = "600",
            paramLabel = "N",
            description = "most flowers that can be worked in the bloom (default 600)")
    String flowers;

    @Option(
            names = "--best",
            defaultValue = "3",
            paramLabel = "K",
            description = "for how many of the best seedlings to plan (default 3)")
    String best;

    @Option(names = "--crosses", defaultValue = "6", paramLabel = "N", description = "most crosses (default 6)")
    String crosses;

    @Option(
            names = "--least-family",
            defaultValue = "20",
            paramLabel = "N",
            description = "fewest seedlings of a cross (default 20)")
    String leastFamily;

    @Option(
            names = "--inbreeding",
            defaultValue = "0.125",
            paramLabel = "F",
            description = "most inbreeding of the seedlings (default 0.125)")
    String inbreeding;

    @Option(
            names = "--one-parent",
            defaultValue = "0.6",
            paramLabel = "SHARE",
            description = "largest share of the seedlings from one parent (default 0.6)")
    String oneParent;

    @Option(
            names = "--sure",
            defaultValue = "0.8",
            paramLabel = "P",
            description = "how sure the flowers should give the seedlings (default 0.8)")
    String sure;

    @Option(names = "--make", description = "write the crosses down")
    boolean make;

    private final Packs packs;
    private final Optional<Relationship> relationship;
    private final Optional<PlaceCapacity> capacity;

    @Activate
    public PlanCommand(
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<CropPack> packs,
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    Relationship relationship,
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    PlaceCapacity capacity) {
        this.packs = new Packs(packs);
        this.relationship = Optional.ofNullable(relationship);
        this.capacity = Optional.ofNullable(capacity);
    }

    @Override
    public Answer run(Call call) throws CallRefused, EditRefused {
        Program program = call.program();
        Optional<CropPack> pack = packs.of(program);
        int free = places(call, program);
        if (free < 1) {
            return Answer.no(
                    Map.of("crosses", List.of(), "notes", List.of()), "There is no free ground for seedlings.");
        }
        RateBook rates = new RateBook(program, pack);
        if (!rates.complete()) {
            String why = "No plan: neither published nor own rates reach from flower to seedling.";
            return Answer.no(Map.of("crosses", List.of(), "notes", List.of(why)), why);
        }
        double certainty = Numbers.inside("--sure", sure);
        Wishes wishes = new Wishes(List.of(), List.of(), certainty, 1, 50, Integer.MAX_VALUE, false);
        PairRanking ranking = new PairRanking(program, pack, relationship, wishes);
        List<RankedPair> pairs = ranking.glance(done -> call.progress("Judging pairs", done));
        call.progress("Planning", 1);
        Limits limits = limits(free);
        Optional<PlanOfCrosses> plan = PlanOfCrosses.of(pairs, new OptionsOfProgram(rates, certainty), limits);
        if (plan.isEmpty()) {
            String why = "No cross keeps these limits: raise --flowers or --inbreeding, or lower --least-family.";
            return Answer.no(Map.of("crosses", List.of(), "notes", List.of(why)), why);
        }
        return answer(call, program, plan.get(), limits, ranking.notes());
    }

    private Answer answer(Call call, Program program, PlanOfCrosses plan, Limits limits, List<String> notesOfPairs)
            throws CallRefused, EditRefused {
        Map<String, Object> json = PlanText.json(plan, limits);
        String words = PlanText.words(plan, limits);
        List<String> notes = new ArrayList<>(notesOfPairs);
        if (make) {
            MakePlan.Made made = MakePlan.of(program, plan, call.today(), call.author());
            call.store().apply(made.edit());
            json.put("made", made.numbers());
            words +=
                    "\n" + Words.say("Written down: %s, with %d tags.", String.join(", ", made.numbers()), made.tags());
        }
        json.put("notes", notes);
        return Answer.of(new LinkedHashMap<>(json), words + "\n" + String.join("\n", notes));
    }

    private Limits limits(int free) throws CallRefused {
        return new Limits(
                free,
                (int) Numbers.whole("--flowers", flowers, 1),
                (int) Numbers.whole("--best", best, 1),
                (int) Numbers.whole("--crosses", crosses, 1),
                (int) Numbers.whole("--least-family", leastFamily, 1),
                Numbers.share("--inbreeding", inbreeding),
                Numbers.inside("--one-parent", oneParent.equals("1") ? "0.9999999" : oneParent));
    }

    private int places(Call call, Program program) throws CallRefused {
        if (places != null) {
            return (int) Numbers.whole("--places", places, 0);
        }
        int year = call.today().getYear() + YEARS_TO_PLANTING;
        return (int) capacity.orElseThrow(() -> new CallRefused("--places: say how many places there will be for the"
                        + " seedlings; the ground module, which would know, is not there"))
                .free(program, year)
                .middle();
    }
}
