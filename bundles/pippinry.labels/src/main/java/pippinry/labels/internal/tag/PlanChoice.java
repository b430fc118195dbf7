package pippinry.labels.internal.tag;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import pippinry.labels.internal.code.CodePicture;

/**
 * Chooses how tags fill a label: tries every arrangement, break of the number and whole-dot module, and takes the one that
 * serves the worst tag best. The weights are our own judgement: first a number that can be read from where it is to be read,
 * then a module that lasts outdoors, then all of the small text, then larger of everything. Cost: a few hundred layouts for
 * each length of number that occurs.
 */
final class PlanChoice {
    private static final double[] SHARES = {0.35, 0.5, 0.65, 0.8};
    private static final int MOST_NUMBER_LINES = 3;

    /** What a number broken over one line more counts against a plan. */
    private static final double BROKEN = 0.5;

    private final TagLayout layout;

    PlanChoice(TagLayout layout) {
        this.layout = layout;
    }

    /** A tag and its code. */
    record Coded(Tag tag, Optional<CodePicture> picture) {}

    /** Empty when no plan fits all of them. */
    Optional<Plan> best(List<Coded> tags) {
        List<Coded> typical = typical(tags);
        Plan best = null;
        double bestScore = Double.NEGATIVE_INFINITY;
        for (Plan plan : plans()) {
            OptionalDouble score = worst(typical, plan);
            if (score.isPresent() && score.getAsDouble() > bestScore) {
                best = plan;
                bestScore = score.getAsDouble();
            }
        }
        return Optional.ofNullable(best);
    }

    /** Of tags with equally long number and equally large code, the one with the most small text. */
    private static List<Coded> typical(List<Coded> tags) {
        Map<String, Coded> longest = new TreeMap<>();
        for (Coded coded : tags) {
            String shape =
                    coded.tag().code().length() + " " + breaks(coded.tag().number()) + " "
                            + coded.picture().map(CodePicture::columns).orElse(0);
            longest.merge(shape, coded, (a, b) -> SMALL_TEXT.compare(a, b) >= 0 ? a : b);
        }
        return List.copyOf(longest.values());
    }

    private static String breaks(String number) {
        return number.replaceAll("[^-/ ]", "x");
    }

    private static final Comparator<Coded> SMALL_TEXT = Comparator.comparingInt(
            coded -> coded.tag().lines().stream().mapToInt(String::length).sum());

    private List<Plan> plans() {
        List<Plan> plans = new ArrayList<>();
        for (Arrangement arrangement : arrangements()) {
            for (int dots = most(); dots >= least(); dots--) {
                addPlans(plans, arrangement, dots);
            }
        }
        return plans;
    }

    private static void addPlans(List<Plan> plans, Arrangement arrangement, int dots) {
        for (int lines = 1; lines <= MOST_NUMBER_LINES; lines++) {
            for (double share : SHARES) {
                plans.add(new Plan(arrangement, lines, share, dots));
            }
        }
    }

    private List<Arrangement> arrangements() {
        return layout.style()
                .symbology()
                .map(symbology -> symbology.isLinear()
                        ? List.of(Arrangement.FOOT)
                        : List.of(Arrangement.BESIDE, Arrangement.BELOW, Arrangement.STACKED))
                .orElse(List.of(Arrangement.TEXT));
    }

    private int most() {
        return layout.style().symbology().isEmpty()
                ? 0
                : Math.max(least(), layout.style().dots().within(TagStyle.LARGEST_MODULE));
    }

    private int least() {
        return layout.style().symbology().isEmpty() ? 0 : layout.style().dots().covering(TagStyle.LEAST_MODULE);
    }

    private OptionalDouble worst(List<Coded> tags, Plan plan) {
        double worst = Double.POSITIVE_INFINITY;
        for (Coded coded : tags) {
            Optional<LaidTag> laid = layout.lay(coded.tag(), coded.picture(), plan);
            if (laid.isEmpty()) {
                return OptionalDouble.empty();
            }
            worst = Math.min(worst, score(laid.get()) - BROKEN * (plan.numberLines() - 1));
        }
        return OptionalDouble.of(worst);
    }

    private double score(LaidTag laid) {
        double wanted = layout.style().wantedCapHeight();
        double module = laid.code().map(CodeSpot::module).orElse(TagStyle.AMPLE_MODULE);
        return 6 * reached(laid.capHeight(), wanted)
                + 3 * reached(module, TagStyle.GOOD_MODULE)
                + 2 * laid.kept()
                + 0.8 * reached(laid.capHeight(), 3 * wanted)
                + 0.4 * reached(module, TagStyle.AMPLE_MODULE)
                + 0.1 * reached(module, TagStyle.LARGEST_MODULE)
                + 0.3 * reached(laid.smallSize(), 3.5);
    }

    private static double reached(double value, double wanted) {
        return Math.min(1, value / wanted);
    }
}
