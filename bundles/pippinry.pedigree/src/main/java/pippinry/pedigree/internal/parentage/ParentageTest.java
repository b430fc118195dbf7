package pippinry.pedigree.internal.parentage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;

/**
 * Weighs the parents recorded of a child against what was read at some markers. Every case - seed parent right or somebody
 * else; pollen by each candidate, by the seed parent itself, or by somebody else of the population - has its chance before the
 * reading and its Mendelian likelihood ({@link Mistyping}); Bayes' rule gives its chance after it. Markers are taken as
 * unlinked.
 *
 * <p>Assumed: a self-incompatible tree sets a seed of its own pollen once in a hundred (ours, no source; some apples do so more
 * often). Relatives of the candidates count as the population does.
 */
final class ParentageTest {
    private static final double SELFING_SLIP = 0.01;

    private final List<Marker> markers;

    ParentageTest(List<? extends Marker> markers) {
        this.markers = List.copyOf(markers);
    }

    private enum Pollen {
        RECORDED,
        SLIP,
        SOMEBODY_ELSE
    }

    private record Case(int seed, Pollen by, int pollen, double before) {}

    Fit of(Claim claim) {
        List<Marker> told =
                markers.stream().filter(marker -> tells(marker, claim)).toList();
        List<Case> cases = cases(claim);
        double[] after = after(cases, told, claim.child());
        double[] pollen = Arrays.stream(claim.pollenParents())
                .mapToDouble(who -> sum(cases, after, c -> c.by == Pollen.RECORDED && c.pollen == who))
                .toArray();
        return new Fit(
                claim.child(),
                against(told, claim),
                told.stream().map(Marker::name).toList(),
                sum(cases, after, c -> c.seed != Marker.ANYBODY),
                pollen,
                possible(told, claim),
                sum(cases, after, c -> c.by == Pollen.SLIP),
                sum(cases, after, c -> c.by == Pollen.SOMEBODY_ELSE));
    }

    private static boolean tells(Marker marker, Claim claim) {
        if (!marker.read(claim.child())) return false;
        boolean bySeed = claim.seedParent() != Marker.ANYBODY && marker.read(claim.seedParent());
        return bySeed || Arrays.stream(claim.pollenParents()).anyMatch(marker::read);
    }

    private static List<Case> cases(Claim claim) {
        List<Case> cases = new ArrayList<>();
        boolean known = claim.seedParent() != Marker.ANYBODY;
        if (known) addCases(cases, claim, claim.seedParent(), 1 - claim.seedWrong());
        addCases(cases, claim, Marker.ANYBODY, known ? claim.seedWrong() : 1);
        return cases;
    }

    private static void addCases(List<Case> cases, Claim claim, int seed, double before) {
        double slip = seed == Marker.ANYBODY || claim.recordsSelfing() ? 0 : SELFING_SLIP;
        int candidates = claim.pollenParents().length;
        double nobodyNamed = candidates == 0 ? 1 : claim.pollenWrong();
        for (int pollen : claim.pollenParents()) {
            double each = before * (1 - slip) * (1 - claim.pollenWrong()) / candidates;
            cases.add(new Case(seed, Pollen.RECORDED, pollen, each));
        }
        if (slip > 0) cases.add(new Case(seed, Pollen.SLIP, seed, before * slip));
        cases.add(new Case(seed, Pollen.SOMEBODY_ELSE, Marker.ANYBODY, before * (1 - slip) * nobodyNamed));
    }

    private static double[] after(List<Case> cases, List<Marker> told, int child) {
        double[] after = cases.stream()
                .mapToDouble(c -> c.before * likelihood(told, child, c.seed, c.pollen))
                .toArray();
        double sum = Arrays.stream(after).sum();
        return Arrays.stream(after).map(joint -> joint / sum).toArray();
    }

    private static double sum(List<Case> cases, double[] after, Predicate<Case> which) {
        double sum = 0;
        for (int i = 0; i < after.length; i++) if (which.test(cases.get(i))) sum += after[i];
        return sum;
    }

    private static double likelihood(List<Marker> told, int child, int seed, int pollen) {
        boolean selfed = isSelfing(seed, pollen);
        double likelihood = 1;
        for (Marker marker : told) {
            likelihood *= selfed
                    ? Mistyping.fromSelfing(marker, child, seed)
                    : Mistyping.fromParents(marker, child, seed, pollen);
        }
        return likelihood;
    }

    private static boolean isSelfing(int seed, int pollen) {
        return seed != Marker.ANYBODY && seed == pollen;
    }

    private static boolean[] possible(List<Marker> told, Claim claim) {
        boolean[] possible = new boolean[claim.pollenParents().length];
        for (int i = 0; i < possible.length; i++) {
            int pollen = claim.pollenParents()[i];
            possible[i] = told.stream().allMatch(marker -> canBe(marker, claim, pollen));
        }
        return possible;
    }

    private static List<String> against(List<Marker> told, Claim claim) {
        int[] pollen = claim.pollenParents().length == 0 ? new int[] {Marker.ANYBODY} : claim.pollenParents();
        return told.stream()
                .filter(marker -> Arrays.stream(pollen).noneMatch(who -> canBe(marker, claim, who)))
                .map(Marker::name)
                .toList();
    }

    private static boolean canBe(Marker marker, Claim claim, int pollen) {
        int child = claim.child();
        int seed = claim.seedParent();
        return (isSelfing(seed, pollen) ? marker.fromSelfing(child, seed) : marker.fromParents(child, seed, pollen))
                > 0;
    }
}
