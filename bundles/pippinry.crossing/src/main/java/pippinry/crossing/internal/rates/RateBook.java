package pippinry.crossing.internal.rates;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pippinry.crossing.internal.Words;
import pippinry.model.Program;
import pippinry.model.ask.HouseRates.Step;
import pippinry.statistics.proportions.BetaBelief;
import pippinry.statistics.proportions.Cascade;
import pippinry.statistics.proportions.Count;
import pippinry.statistics.proportions.NestedRates;
import pippinry.statistics.proportions.PublishedRange;
import pippinry.traits.CropPack;
import pippinry.traits.PublishedRate;

/**
 * The house rates of a program: own counts by seed parent and year over the published range, by {@link NestedRates}.
 *
 * <p>A step with neither a published range nor own counts is left out of the funnel, and that is said.
 */
public final class RateBook {

    /** Ovules of a fruit where the crop pack does not say: 5 carpels of 2 (firmanpollen.com 2024-11-14, trade page). */
    private static final int USUAL_OVULES = 10;

    private static final Map<Step, String> PUBLISHED = new EnumMap<>(Map.of(
            Step.SET, "set",
            Step.SEEDS_PER_FRUIT, "seeds_per_fruit",
            Step.EMERGENCE, "emergence",
            Step.TAKE, "graft_take",
            Step.POTTING, "potting",
            Step.FIELD, "field"));

    private final Optional<CropPack> pack;
    private final int ovules;
    private final OwnCounts counts;
    private final Map<Step, NestedRates> rates = new EnumMap<>(Step.class);
    private final Map<String, BetaBelief> asked = new HashMap<>();

    public RateBook(Program program, Optional<CropPack> pack) {
        this.pack = pack;
        this.ovules = pack.flatMap(facts -> facts.rate("ovules"))
                .map(rate -> (int) Math.round(rate.typical()))
                .orElse(USUAL_OVULES);
        this.counts = new OwnCounts(program, ovules);
    }

    /** Seeds a fruit can hold at most. */
    public int ovules() {
        return ovules;
    }

    /** Belief about the share that passes in the next batch of a seed parent (a stock, for grafts). */
    public Optional<BetaBelief> belief(Step step, String group) {
        if (prior(step).isEmpty() && counts.groups(step).isEmpty()) {
            return Optional.empty();
        }
        NestedRates known = rates(step);
        String which = known.total(group).isPresent() ? group : "";
        return Optional.of(asked.computeIfAbsent(step + " " + which, any -> known.next(which)));
    }

    /** The steps from flower to potted seedling, as far as anything is known of them. */
    public Cascade funnel(String seedParent) {
        return funnel(belief(Step.SET, seedParent), seedParent);
    }

    /** The same with another belief about the set, as for pollen of a triploid. */
    public Cascade funnel(Optional<BetaBelief> set, String seedParent) {
        List<Cascade.Stage> stages = new ArrayList<>();
        set.ifPresent(passes -> stages.add(new Cascade.Stage("set", passes, ovules)));
        belief(Step.SEEDS_PER_FRUIT, seedParent).ifPresent(passes -> stages.add(new Cascade.Stage("seeds", passes, 1)));
        belief(Step.EMERGENCE, seedParent).ifPresent(passes -> stages.add(new Cascade.Stage("emergence", passes, 1)));
        belief(Step.POTTING, seedParent).ifPresent(passes -> stages.add(new Cascade.Stage("potting", passes, 1)));
        return new Cascade(stages);
    }

    /** Whether the rates reach from flower to seedling. */
    public boolean complete() {
        return belief(Step.SET, "").isPresent()
                && belief(Step.SEEDS_PER_FRUIT, "").isPresent()
                && belief(Step.EMERGENCE, "").isPresent();
    }

    /** Set with pollen of a triploid, if something is published of it. */
    public Optional<BetaBelief> triploidSet() {
        return pack.flatMap(facts -> facts.rate("triploid_set")).flatMap(RateBook::prior);
    }

    /** What a rate rests on, in words. */
    public String ground(Step step, String group) {
        Optional<Count> own = rates(step).total(group).filter(count -> !group.equals(OwnCounts.UNKNOWN_GROUP));
        Count all = rates(step).total();
        String published = published(step)
                .map(rate ->
                        "published " + rate.what() + " (" + rate.provenance().words() + ")")
                .orElse("no published figure");
        if (all.trials() == 0) {
            return published + "; no own counts yet";
        }
        String mine = own.map(count -> Words.say("%s itself %d of %d, ", group, count.successes(), count.trials()))
                .orElse("");
        return Words.say("own counts: %sall %d of %d; over %s", mine, all.successes(), all.trials(), published);
    }

    /** True when own counts exist for the step. */
    public boolean counted(Step step) {
        return rates(step).total().trials() > 0;
    }

    private NestedRates rates(Step step) {
        return rates.computeIfAbsent(
                step, any -> new NestedRates(prior(step).orElse(BetaBelief.UNIFORM), counts.groups(step)));
    }

    private Optional<PublishedRate> published(Step step) {
        return pack.flatMap(facts -> facts.rate(PUBLISHED.get(step)));
    }

    private Optional<BetaBelief> prior(Step step) {
        return step == Step.SEEDS_PER_FRUIT
                ? published(step).flatMap(rate -> prior(rate, ovules))
                : published(step).flatMap(RateBook::prior);
    }

    private static Optional<BetaBelief> prior(PublishedRate rate) {
        return prior(rate, 1);
    }

    /** Only a range of two values or more says how far a rate may lie off. */
    private static Optional<BetaBelief> prior(PublishedRate rate, double whole) {
        if (rate.low().isEmpty() || rate.high().isEmpty() || rate.values() < 2) {
            return Optional.empty();
        }
        return Optional.of(new PublishedRange(
                        rate.low().getAsDouble() / whole,
                        rate.typical() / whole,
                        rate.high().getAsDouble() / whole,
                        rate.values())
                .prior());
    }
}
