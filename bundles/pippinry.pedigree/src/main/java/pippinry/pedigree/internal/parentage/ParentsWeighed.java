package pippinry.pedigree.internal.parentage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import pippinry.model.ask.ParentChance;
import pippinry.model.record.Genotype;
import pippinry.model.value.Code;

/** What the markers say of one genotype's parents, in figures and in words. */
public final class ParentsWeighed {
    private static final double WORTH_NAMING = 0.005;

    private final Genotype child;
    private final List<Code<Genotype>> pollenParents;
    private final Fit fit;

    ParentsWeighed(Genotype child, List<Code<Genotype>> pollenParents, Fit fit) {
        this.child = child;
        this.pollenParents = List.copyOf(pollenParents);
        this.fit = fit;
    }

    public Genotype child() {
        return child;
    }

    /** Whether the parents on record can be the parents if all readings are right; true also when nothing was read. */
    public boolean possible() {
        return fit.against().isEmpty();
    }

    /** Markers by which they cannot. */
    public List<String> against() {
        return fit.against();
    }

    /** Markers that had something to say. */
    public List<String> markers() {
        return fit.markers();
    }

    /** Chance that the seed parent on record is right; 0 when there is none on record. */
    public double seedParent() {
        return fit.seedParent();
    }

    /** Chance that the seed parent's own pollen did it though another was recorded. */
    public double selfed() {
        return fit.selfed();
    }

    /** Chance that the pollen came from none of those asked about. */
    public double somebodyElse() {
        return fit.somebodyElse();
    }

    /** Chances of the pollen parents asked about, in their order; with {@link #selfed()} and {@link #somebodyElse()} they sum to 1. */
    public double[] pollenParents() {
        return fit.pollenParents().clone();
    }

    /** The pollen parents, likeliest first, at the end somebody who is not named when that may be. */
    public List<ParentChance> chances() {
        List<ParentChance> chances = new ArrayList<>();
        for (int i = 0; i < pollenParents.size(); i++) {
            chances.add(new ParentChance(Optional.of(pollenParents.get(i)), fit.pollenParents()[i], fit.possible()[i]));
        }
        boolean slip = fit.selfed() >= WORTH_NAMING;
        if (slip) chances.add(new ParentChance(child.seedParent(), fit.selfed(), true));
        chances.sort(Comparator.comparingDouble(ParentChance::chance).reversed());
        chances.add(new ParentChance(Optional.empty(), fit.somebodyElse() + (slip ? 0 : fit.selfed()), true));
        return chances;
    }

    /** A sentence when the parents on record are impossible, or candidates are told apart; empty when there is nothing to say. */
    public Optional<String> words() {
        if (!possible()) return Optional.of(impossible());
        boolean tellsApart = pollenParents.size() > 1 && !fit.markers().isEmpty();
        return tellsApart ? Optional.of(candidates()) : Optional.empty();
    }

    private String impossible() {
        String parents = child.seedParent().map(Code::text).orElse("an unknown seed parent") + " with pollen of "
                + (pollenParents.isEmpty() ? "anybody" : names(" or "));
        return "By %s %s cannot come from %s; likeliest: %s"
                .formatted(String.join(", ", fit.against()), child.code(), parents, likeliest());
    }

    private String likeliest() {
        double recorded = Arrays.stream(fit.pollenParents()).sum();
        Map<String, Double> causes = Map.of(
                "pollen of its seed parent itself", fit.selfed(),
                "other pollen", fit.somebodyElse(),
                "another seed parent", 1 - fit.seedParent(),
                "a wrong reading", Math.min(recorded, fit.seedParent()));
        return causes.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(cause -> cause.getKey() + " (" + percent(cause.getValue()) + ")")
                .orElseThrow();
    }

    private String candidates() {
        String each = chances().stream().map(ParentsWeighed::words).collect(Collectors.joining(", "));
        return "By %s the pollen parent of %s is %s".formatted(String.join(", ", fit.markers()), child.code(), each);
    }

    private static String words(ParentChance chance) {
        String who = chance.parent().map(Code::text).orElse("somebody else");
        return "%s (%s%s)".formatted(who, percent(chance.chance()), chance.possible() ? "" : ", impossible");
    }

    private String names(String between) {
        return pollenParents.stream().map(Code::text).collect(Collectors.joining(between));
    }

    static String percent(double chance) {
        return String.format(Locale.ROOT, chance < 0.1 ? "%.1f %%" : "%.0f %%", 100 * chance);
    }
}
