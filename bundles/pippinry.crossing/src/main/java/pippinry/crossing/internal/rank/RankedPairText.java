package pippinry.crossing.internal.rank;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import pippinry.crossing.internal.Words;
import pippinry.crossing.internal.quantity.CrossQuantity;
import pippinry.model.ask.Interval;
import pippinry.model.record.GoalKind;
import pippinry.traits.Fertility;

/** Ranked pairs as values for JSON and as lines for a person. */
public final class RankedPairText {

    private RankedPairText() {}

    public static Map<String, Object> json(RankedPair pair) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("seed_parent", pair.seedParent().text());
        json.put("pollen_parent", pair.pollenParent().text());
        json.put("fertility", pair.compatibility().fertility().word());
        if (pair.compatibility().fertility() == Fertility.UNKNOWN) {
            json.put("possible", possible(pair));
        }
        json.put("s_offspring", pair.compatibility().offspring());
        json.put("share", pair.share().isPresent() ? pair.share().getAsDouble() : null);
        json.put("goals", pair.goals().stream().map(RankedPairText::json).toList());
        json.put(
                "relationship",
                pair.relationship().isPresent() ? pair.relationship().getAsDouble() : null);
        json.put("bloom_gap_days", pair.bloomGapDays().map(Interval::middle).orElse(null));
        json.put("seedlings", pair.seedlings().isPresent() ? pair.seedlings().getAsLong() : null);
        json.put("flowers", pair.flowers().map(RankedPairText::json).orElse(null));
        if (pair.beats().isPresent()) {
            json.put("beats_check", pair.beats().getAsDouble());
        }
        json.put("rank", pair.rank());
        json.put("worth", pair.worth());
        json.put("factors", pair.factors());
        json.put("reasons", pair.reasons());
        return json;
    }

    private static Map<String, Object> json(Flowers flowers) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("median", flowers.median());
        json.put("low", flowers.low());
        json.put("high", flowers.high());
        return json;
    }

    private static Map<String, Object> json(CrossQuantity quantity) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("trait", quantity.goal().trait());
        json.put("kind", quantity.goal().kind().map(GoalKind::word).orElse(""));
        json.put("mean", quantity.outlook().mean());
        json.put("doubt", quantity.outlook().doubt());
        json.put("spread", quantity.outlook().spread());
        json.put("share", quantity.share().isPresent() ? quantity.share().getAsDouble() : null);
        return json;
    }

    private static Map<String, Object> json(GoalShare goal) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("trait", goal.trait());
        json.put("kind", goal.kind().word());
        json.put("share", goal.share());
        json.put("low", goal.low());
        json.put("high", goal.high());
        json.put("loci", goal.loci());
        json.put("decides", goal.decides());
        return json;
    }

    private static TreeSet<String> possible(RankedPair pair) {
        return pair.compatibility().possible().stream()
                .map(Fertility::word)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    public static String words(List<RankedPair> pairs, List<String> notes) {
        StringBuilder words = new StringBuilder();
        if (pairs.isEmpty()) {
            words.append("No pair of parents is possible.\n");
        }
        for (RankedPair pair : pairs) {
            words.append(Words.say("%2d. %s x %s", pair.rank(), pair.seedParent(), pair.pollenParent()))
                    .append('\n');
            pair.reasons()
                    .forEach(reason -> words.append("      ").append(reason).append('\n'));
        }
        notes.forEach(note -> words.append(note).append('\n'));
        return words.toString().stripTrailing();
    }
}
