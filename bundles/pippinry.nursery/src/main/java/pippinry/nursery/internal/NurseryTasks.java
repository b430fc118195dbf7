package pippinry.nursery.internal;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import pippinry.model.Program;
import pippinry.model.ask.BloomDates;
import pippinry.model.ask.DueTask;
import pippinry.model.ask.HouseRates;
import pippinry.model.ask.TaskSource;
import pippinry.nursery.internal.copies.GraftAgain;
import pippinry.nursery.internal.copies.HardenOff;
import pippinry.nursery.internal.copies.LossCause;
import pippinry.nursery.internal.copies.OnlyCopy;
import pippinry.nursery.internal.copies.PlantOut;
import pippinry.nursery.internal.copies.ReadGrafts;
import pippinry.nursery.internal.copies.RubOffShoots;
import pippinry.nursery.internal.copies.StoolBed;
import pippinry.nursery.internal.plan.BloomWatch;
import pippinry.nursery.internal.plan.GatherPollen;
import pippinry.nursery.internal.plan.MakeReady;
import pippinry.nursery.internal.plan.PollinateCross;
import pippinry.nursery.internal.plan.TestPollen;
import pippinry.nursery.internal.round.BagsOff;
import pippinry.nursery.internal.round.CloseCross;
import pippinry.nursery.internal.round.CrossFruit;
import pippinry.nursery.internal.round.FrostCheck;
import pippinry.nursery.internal.round.JuneCount;
import pippinry.nursery.internal.round.SecondPass;
import pippinry.nursery.internal.round.SetCount;
import pippinry.nursery.internal.round.UnboundTags;
import pippinry.nursery.internal.seed.ColdLook;
import pippinry.nursery.internal.seed.CountEmergence;
import pippinry.nursery.internal.seed.CountSeeds;
import pippinry.nursery.internal.seed.IntoTheCold;
import pippinry.nursery.internal.seed.LotSource;
import pippinry.nursery.internal.seed.PotSeedlings;
import pippinry.nursery.internal.seed.SowLot;
import pippinry.nursery.internal.work.Crop;
import pippinry.nursery.internal.work.LastFrost;
import pippinry.nursery.internal.work.Look;
import pippinry.nursery.internal.work.WorkRule;
import pippinry.traits.CropPack;

/** Finds what is due from planned cross to planted tree. */
@Component
public final class NurseryTasks implements TaskSource {

    private static final List<WorkRule> RULES = List.of(
            new MakeReady(),
            new TestPollen(),
            new BloomWatch(),
            new GatherPollen(),
            new PollinateCross(),
            new SecondPass(),
            new UnboundTags(),
            new FrostCheck(),
            new BagsOff(),
            new SetCount(),
            new JuneCount(),
            new CrossFruit(),
            new CloseCross(),
            new LotSource(),
            new CountSeeds(),
            new IntoTheCold(),
            new ColdLook(),
            new SowLot(),
            new CountEmergence(),
            new PotSeedlings(),
            new HardenOff(),
            new PlantOut(),
            new ReadGrafts(),
            new RubOffShoots(),
            new GraftAgain(),
            new OnlyCopy(),
            new StoolBed(),
            new LossCause());

    private final Optional<BloomDates> bloom;
    private final Optional<HouseRates> rates;
    private final List<CropPack> packs;

    @Activate
    public NurseryTasks(
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    BloomDates bloom,
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    HouseRates rates,
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<CropPack> packs) {
        this.packs = List.copyOf(packs);
        this.bloom = Optional.ofNullable(bloom);
        this.rates = Optional.ofNullable(rates);
    }

    @Override
    public List<DueTask> tasks(Program program, LocalDate today, LocalDate from, LocalDate to) {
        Look look = new Look(program, today, to, Crop.terms(program, packs), bloom, rates);
        return RULES.stream()
                .flatMap(rule -> rule.find(look))
                .filter(task -> !task.due().isAfter(to))
                .filter(task -> !task.until().isBefore(from) || task.until().isBefore(today))
                .toList();
    }

    @Override
    public List<String> missing(Program program) {
        return Stream.of(
                        bloom.isEmpty()
                                ? "No module that knows bloom: work in bloom is dated by the mean of own notes, else by the"
                                        + " calendar"
                                : "",
                        rates.isEmpty() ? "No module that knows house rates: flowers needed are not reckoned" : "",
                        Crop.pack(program, packs).isEmpty()
                                ? "No facts about this program's crop: cold and emergence are dated by common practice"
                                : "",
                        LastFrost.of(program).expected(1).isEmpty()
                                ? "Fewer than three springs of weather or frost on file: last frost is taken as 20 May"
                                        + " (north), common practice, no source"
                                : "")
                .filter(text -> !text.isEmpty())
                .toList();
    }
}
