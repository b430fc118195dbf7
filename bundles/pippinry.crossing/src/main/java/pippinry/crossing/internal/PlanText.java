package pippinry.crossing.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import pippinry.crossing.internal.allocate.Allocation;
import pippinry.crossing.internal.allocate.Limits;
import pippinry.crossing.internal.allocate.PlanOfCrosses;

/** A plan of crosses as values for JSON and as lines for a person. */
final class PlanText {

    private PlanText() {}

    static Map<String, Object> json(PlanOfCrosses plan, Limits limits) {
        Map<String, Object> json = new LinkedHashMap<>();
        List<Map<String, Object>> crosses = new ArrayList<>();
        plan.crosses().forEach(cross -> crosses.add(json(cross)));
        json.put("crosses", crosses);
        json.put("seedlings", plan.plan().seedlings());
        json.put("places", limits.places());
        json.put("flowers", plan.flowers());
        json.put("most_flowers", limits.flowers());
        json.put("best", limits.best());
        json.put("worth", plan.plan().worth());
        json.put("bound", plan.plan().bound());
        json.put("gap", plan.plan().gap());
        json.put("second", plan.second().map(PlanText::json).orElse(null));
        json.put("loss_of_second", plan.second().isPresent() ? plan.lossOfSecond() : null);
        return json;
    }

    private static Map<String, Object> json(PlanOfCrosses.Planned cross) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("seed_parent", cross.pair().seedParent().text());
        json.put("pollen_parent", cross.pair().pollenParent().text());
        json.put("seedlings", cross.seedlings());
        json.put("flowers", cross.flowers());
        json.put(
                "share", cross.pair().share().isPresent() ? cross.pair().share().getAsDouble() : null);
        json.put(
                "relationship",
                cross.pair().relationship().isPresent()
                        ? cross.pair().relationship().getAsDouble()
                        : null);
        return json;
    }

    private static Map<String, Object> json(Allocation plan) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("worth", plan.worth());
        json.put("crosses", plan.shares().stream().map(PlanText::pair).toList());
        return json;
    }

    private static Map<String, Object> pair(Allocation.Part part) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("seed_parent", part.cross().seedParent().text());
        json.put("pollen_parent", part.cross().pollenParent().text());
        json.put("seedlings", part.seedlings());
        return json;
    }

    static String words(PlanOfCrosses plan, Limits limits) {
        StringBuilder words = new StringBuilder();
        plan.crosses()
                .forEach(cross -> words.append(Words.say(
                        "%s x %s: %d seedlings from %d flowers%s%n",
                        cross.pair().seedParent(),
                        cross.pair().pollenParent(),
                        cross.seedlings(),
                        cross.flowers(),
                        cross.pair().share().isPresent()
                                ? "; " + Words.share(cross.pair().share().getAsDouble())
                                        + " should have every must that can be told"
                                : "")));
        words.append(Words.say(
                "In all %d of %d places and %d of %d flowers.%n",
                plan.plan().seedlings(), limits.places(), plan.flowers(), limits.flowers()));
        words.append(Words.say(
                "The best %d seedlings should be worth %.2f standard deviations more in the wishes than the mean of the parents,"
                        + " each; no plan within these limits can do better by more than %s.%n",
                limits.best(),
                plan.plan().worth() / limits.best() - 1,
                Words.percent(plan.plan().gap())));
        plan.second()
                .ifPresent(second -> words.append(Words.say(
                        "The next best choice (%s) would lose %s of that.",
                        second.shares().stream()
                                .map(part -> part.cross().seedParent() + " x "
                                        + part.cross().pollenParent())
                                .collect(Collectors.joining(", ")),
                        Words.percent(Math.max(0, plan.lossOfSecond())))));
        return words.toString().stripTrailing();
    }
}
