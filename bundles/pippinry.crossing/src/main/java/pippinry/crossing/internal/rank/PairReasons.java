package pippinry.crossing.internal.rank;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import pippinry.crossing.internal.Words;
import pippinry.crossing.internal.genes.GeneBook;
import pippinry.crossing.internal.genes.GoalReading;
import pippinry.crossing.internal.quantity.CrossQuantity;
import pippinry.crossing.internal.rates.RateBook;
import pippinry.model.Program;
import pippinry.model.ask.HouseRates.Step;
import pippinry.model.ask.Interval;
import pippinry.model.record.Cross;
import pippinry.model.record.Direction;
import pippinry.model.record.Genotype;
import pippinry.model.record.Goal;
import pippinry.model.record.GoalKind;
import pippinry.model.record.Kinds;
import pippinry.model.value.Code;
import pippinry.model.value.PollenParent;
import pippinry.statistics.selection.FamilyOutlook;
import pippinry.traits.CropPack;
import pippinry.traits.TraitDefinition;

/** Says in sentences why a pair stands where it stands. */
final class PairReasons {

    private final Program program;
    private final GeneBook genes;
    private final RateBook rates;
    private final Wishes wishes;
    private final Optional<CropPack> pack;

    PairReasons(Program program, GeneBook genes, RateBook rates, Wishes wishes, Optional<CropPack> pack) {
        this.program = program;
        this.genes = genes;
        this.rates = rates;
        this.wishes = wishes;
        this.pack = pack;
    }

    RankedPair add(RankedPair pair) {
        List<String> reasons = new ArrayList<>();
        reasons.add(fertility(pair));
        reasons.addAll(pair.compatibility().notes());
        pair.goals().forEach(goal -> reasons.add(goal(goal)));
        pair.quantities().forEach(quantity -> reasons.add(quantity(quantity, pair.planned())));
        notTold(pair).ifPresent(reasons::add);
        pair.relationship().ifPresent(f -> reasons.add(related(f)));
        reasons.add(bloom(pair));
        reasons.add(numbers(pair));
        pair.beats()
                .ifPresent(chance -> reasons.add(Words.say(
                        "The chance that one of %d at least beats %s in %s by %s: %s.",
                        pair.planned(),
                        wishes.beat().orElseThrow().check(),
                        wishes.beat().orElseThrow().trait(),
                        wishes.beat().orElseThrow().by(),
                        Words.percent(chance))));
        tried(pair).ifPresent(reasons::add);
        reasons.add(weakest(pair.factors()));
        return new RankedPair(
                pair.seedParent(),
                pair.pollenParent(),
                pair.compatibility(),
                pair.share(),
                pair.goals(),
                pair.quantities(),
                pair.relationship(),
                pair.bloomGapDays(),
                pair.seedlings(),
                pair.planned(),
                pair.flowers(),
                pair.beats(),
                pair.worth(),
                pair.factors(),
                pair.rank(),
                List.copyOf(reasons));
    }

    private String fertility(RankedPair pair) {
        String alleles = genes.sAlleles(pair.seedParent()) + " with pollen of " + genes.sAlleles(pair.pollenParent());
        return switch (pair.compatibility().fertility()) {
            case FULL -> "All the pollen works (" + alleles + ").";
            case HALF ->
                "Part of the pollen is rejected, enough is left for a hand pollination (" + alleles
                        + "); the seedlings are "
                        + String.join(", ", pair.compatibility().offspring().keySet()) + ".";
            case NONE -> "The style rejects all the pollen (" + alleles + ").";
            case UNKNOWN -> "Whether the pollen works is not known (" + alleles + ").";
        };
    }

    private static String goal(GoalShare goal) {
        String doubt = goal.high() - goal.low() > 0.005
                ? Words.say(
                        " (%s to %s, as the parents turn out)", Words.percent(goal.low()), Words.percent(goal.high()))
                : "";
        String what = goal.decides() ? " have it by " : " get the help of ";
        return goal.goal() + ": " + Words.share(goal.share()) + " of the seedlings" + what + goal.loci() + doubt + ".";
    }

    private String quantity(CrossQuantity quantity, int planned) {
        FamilyOutlook outlook = quantity.outlook();
        String mean = Words.say(
                "%s: family mean %.3g (give or take %.2g%s), spread %.2g",
                GoalReading.words(quantity.goal(), pack),
                outlook.mean(),
                outlook.doubt(),
                quantity.told() ? "" : ", the mean of all since neither parent has a record",
                outlook.spread());
        if (quantity.share().isPresent()) {
            return mean + "; " + Words.share(quantity.share().getAsDouble()) + " of the seedlings reach it.";
        }
        boolean less = quantity.goal().direction().equals(Optional.of(Direction.LESS));
        double best = less ? 2 * outlook.mean() - outlook.bestOf(planned) : outlook.bestOf(planned);
        boolean near = quantity.goal().direction().equals(Optional.of(Direction.NEAR));
        return near
                ? mean + "."
                : mean + Words.say("; the best of %d should be near %.3g.", planned, within(quantity.goal(), best));
    }

    /** A scale ends somewhere. */
    private double within(Goal goal, double value) {
        Optional<TraitDefinition> trait = pack.flatMap(facts -> facts.trait(goal.trait()));
        double low = trait.map(found -> found.low().orElse(value)).orElse(value);
        double high = trait.map(found -> found.high().orElse(value)).orElse(value);
        return Math.max(low, Math.min(high, value));
    }

    private Optional<String> notTold(RankedPair pair) {
        List<String> open = new ArrayList<>();
        for (int i = 0; i < genes.goals().size(); i++) {
            boolean must = genes.goals().get(i).goal().kind().equals(Optional.of(GoalKind.MUST));
            if (must && genes.goals().get(i).decides() && !genes.told(i, pair.seedParent(), pair.pollenParent())) {
                open.add(genes.goals().get(i).goal().trait());
            }
        }
        return open.isEmpty()
                ? Optional.empty()
                : Optional.of("Of neither parent is anything on file about the genes for " + String.join(", ", open)
                        + ": the share cannot be known, and it counts as one in four each.");
    }

    private static String related(double f) {
        String like = f >= 0.249
                ? ", as from full sisters or parent and child"
                : f >= 0.124 ? ", as from half sisters" : f >= 0.062 ? ", as from cousins" : "";
        return f == 0
                ? "The parents are not related, as far as the pedigree goes."
                : Words.say("The seedlings would be inbred by %.3f%s.", f, like);
    }

    private String bloom(RankedPair pair) {
        if (pair.bloomGapDays().isEmpty()) {
            return "The bloom gap is not known: no dates here join the two.";
        }
        Interval gap = pair.bloomGapDays().get();
        String spread = Double.isInfinite(gap.low())
                ? ""
                : Words.say(" (in four years of five %.0f to %.0f)", gap.low(), gap.high());
        double days = gap.middle();
        if (Math.abs(days) < 0.5) {
            return "Both are in full bloom together here" + spread + ".";
        }
        String first = days > 0
                ? pair.pollenParent() + " flowers %.0f days after " + pair.seedParent() + " here"
                : pair.pollenParent() + " flowers %.0f days before " + pair.seedParent() + " here";
        String what = days > 1.5
                ? ": stored pollen or flowers held back are needed."
                : days < -1.5 ? ": its pollen has to be dried and kept cold that long." : ".";
        return Words.say(first, Math.abs(days)) + spread + what;
    }

    private String numbers(RankedPair pair) {
        String flowers = pair.flowers()
                .map(some -> Words.say(
                        " Flowers for %d seedlings: %d with even chances, %d to be nine times in ten on the safe side (%s).",
                        pair.planned(),
                        some.median(),
                        some.high(),
                        rates.counted(Step.SET) ? "own counts over published rates" : "published rates"))
                .orElse("");
        if (pair.share().isEmpty()) {
            return Words.say("A family of %d seedlings is planned for.", pair.planned()) + flowers;
        }
        if (pair.seedlings().isEmpty()) {
            return Words.say(
                            "%s of the seedlings are expected to have every must that can be told; the doubt about the parents is too"
                                    + " large for any number to make %s sure.",
                            capital(Words.share(pair.share().getAsDouble())), Words.percent(wishes.sure()))
                    + flowers;
        }
        return Words.say(
                        "%s of the seedlings are expected to have every must that can be told; %d seedlings give %s for at"
                                + " least %d, the doubt about the parents taken in.",
                        capital(Words.share(pair.share().getAsDouble())),
                        pair.seedlings().getAsLong(),
                        Words.percent(wishes.sure()),
                        wishes.atLeast())
                + flowers;
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private Optional<String> tried(RankedPair pair) {
        List<String> crosses = program.table(Kinds.CROSSES).stream()
                .filter(cross -> cross.seedParent().equals(Optional.of(pair.seedParent())))
                .filter(cross -> isOf(cross, pair.pollenParent()))
                .map(cross -> cross.code().text())
                .toList();
        return crosses.isEmpty()
                ? Optional.empty()
                : Optional.of("Made here before: " + String.join(", ", crosses) + ".");
    }

    private static boolean isOf(Cross cross, Code<Genotype> pollen) {
        return cross.pollenParent().how() == PollenParent.How.KNOWN
                && cross.pollenParent().candidates().contains(pollen);
    }

    private static String weakest(Map<String, Double> factors) {
        OptionalDouble lowest = factors.values().stream().mapToDouble(f -> f).min();
        String names = String.join(
                ", ",
                factors.entrySet().stream()
                        .map(factor -> Words.say("%s %.2g", factor.getKey(), factor.getValue()))
                        .toList());
        return "It stands here by " + names + (lowest.orElse(1) >= 1 ? ": nothing speaks against it." : ".");
    }
}
