package pippinry.crossing.internal.genes;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;

/**
 * What a parent may carry at the loci of one linkage group: every pair of chromosomes that agrees with its dosages, with
 * its probability. Where it is not known which alleles lie on one chromosome, both ways count alike.
 */
public final class ParentGenes {

    /** A pair of chromosomes, by the bits of the loci with the effect allele. */
    public record Pair(double chance, int one, int other) {}

    private final LinkageGroup group;
    private final List<Pair> pairs;
    private final double[] gametes;
    private final boolean told;

    private ParentGenes(LinkageGroup group, List<Pair> pairs, double[] gametes, boolean told) {
        this.group = group;
        this.pairs = List.copyOf(pairs);
        this.gametes = gametes;
        this.told = told;
    }

    /**
     * From the dosage at each locus of the group.
     *
     * <p>A triploid's gametes are taken as carrying one allele of three at each locus, loci independent: an
     * approximation, since most of its gametes are unbalanced.
     *
     * @param fromSeedParent for a locus with one copy the probability that it lies on the chromosome of the seed parent;
     *     1/2 where the map says nothing
     */
    public static ParentGenes of(LinkageGroup group, Map<String, Dosage> dosages, Map<String, Double> fromSeedParent) {
        List<Dosage> inOrder = group.loci().stream().map(dosages::get).toList();
        boolean told = inOrder.stream().anyMatch(Dosage::told);
        if (inOrder.stream().anyMatch(dosage -> dosage.ploidy() != 2)) {
            return new ParentGenes(group, List.of(), independent(inOrder), told);
        }
        double[] seedSide = group.loci().stream()
                .mapToDouble(locus -> fromSeedParent.getOrDefault(locus, 0.5))
                .toArray();
        List<Pair> pairs = new ArrayList<>();
        combine(inOrder, seedSide, 0, new Pair(1, 0, 0), pairs);
        return ofPairs(group, merged(pairs), told);
    }

    /** From chromosomes that are known, or known to some probability; chances sum to 1. */
    public static ParentGenes ofPairs(LinkageGroup group, List<Pair> pairs) {
        return ofPairs(group, pairs, true);
    }

    private static ParentGenes ofPairs(LinkageGroup group, List<Pair> pairs, boolean told) {
        double[] gametes = new double[1 << group.loci().size()];
        for (Pair pair : pairs) {
            double[] some = group.gametes(pair.one(), pair.other());
            for (int i = 0; i < gametes.length; i++) {
                gametes[i] += pair.chance() * some[i];
            }
        }
        return new ParentGenes(group, pairs, gametes, told);
    }

    public LinkageGroup group() {
        return group;
    }

    /** Every pair of chromosomes that may be; empty for a triploid. */
    public List<Pair> pairs() {
        return pairs;
    }

    /** The pairs that make a difference between cases: none where nothing is told and only the prior speaks. */
    List<Pair> cases() {
        return told ? pairs : List.of();
    }

    /** Share of each kind of gamete, expected over what is not known. */
    public double[] gametes() {
        return gametes.clone();
    }

    /**
     * Gametes of the kinds that are let through, shared out anew; all zero if none is. The style's choice among S-alleles
     * is of this kind, and what lies near S goes with it.
     */
    public double[] gametes(IntPredicate letThrough) {
        double[] some = gametes.clone();
        double sum = 0;
        for (int kind = 0; kind < some.length; kind++) {
            some[kind] = letThrough.test(kind) ? some[kind] : 0;
            sum += some[kind];
        }
        for (int kind = 0; kind < some.length && sum > 0; kind++) {
            some[kind] /= sum;
        }
        return some;
    }

    /** This parent as it would be with one of its pairs of chromosomes. */
    public ParentGenes only(Pair pair) {
        return ofPairs(group, List.of(new Pair(1, pair.one(), pair.other())));
    }

    private static void combine(List<Dosage> dosages, double[] seedSide, int locus, Pair sofar, List<Pair> pairs) {
        if (locus == dosages.size()) {
            pairs.add(sofar);
            return;
        }
        int bit = 1 << locus;
        Dosage dosage = dosages.get(locus);
        put(dosages, seedSide, locus, sofar, dosage.chance(0), 0, 0, pairs);
        put(dosages, seedSide, locus, sofar, dosage.chance(1) * seedSide[locus], bit, 0, pairs);
        put(dosages, seedSide, locus, sofar, dosage.chance(1) * (1 - seedSide[locus]), 0, bit, pairs);
        put(dosages, seedSide, locus, sofar, dosage.chance(2), bit, bit, pairs);
    }

    private static void put(
            List<Dosage> dosages,
            double[] seedSide,
            int locus,
            Pair sofar,
            double chance,
            int one,
            int other,
            List<Pair> pairs) {
        if (chance > 0) {
            Pair next = new Pair(sofar.chance() * chance, sofar.one() | one, sofar.other() | other);
            combine(dosages, seedSide, locus + 1, next, pairs);
        }
    }

    /** The gametes do not depend on which chromosome of a pair came from which side. */
    private static List<Pair> merged(List<Pair> pairs) {
        Map<Long, Pair> byPair = new LinkedHashMap<>();
        for (Pair pair : pairs) {
            int low = Math.min(pair.one(), pair.other());
            int high = Math.max(pair.one(), pair.other());
            byPair.merge(
                    (long) low << 32 | high,
                    new Pair(pair.chance(), low, high),
                    (known, same) -> new Pair(known.chance() + same.chance(), low, high));
        }
        return List.copyOf(byPair.values());
    }

    private static double[] independent(List<Dosage> dosages) {
        double[] gametes = {1};
        for (Dosage dosage : dosages) {
            double[] longer = new double[2 * gametes.length];
            for (int kind = 0; kind < gametes.length; kind++) {
                longer[kind] = gametes[kind] * (1 - dosage.gamete());
                longer[kind | gametes.length] = gametes[kind] * dosage.gamete();
            }
            gametes = longer;
        }
        return gametes;
    }
}
