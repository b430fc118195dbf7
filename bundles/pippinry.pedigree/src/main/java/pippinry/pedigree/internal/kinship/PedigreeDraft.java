package pippinry.pedigree.internal.kinship;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Parentage as it is told, in any order; {@link #build()} makes the sorted {@link PedigreeGraph} of it. Individuals are
 * numbered from 0 in the order of {@link #add()}. A parent is an individual's number, {@link #UNKNOWN}, {@link #OPEN} or
 * what {@link #oneOf} returned.
 */
public final class PedigreeDraft {
    /** Nobody is known: a founder of its own, unrelated to everybody. */
    public static final int UNKNOWN = -1;

    /** Open pollination: somebody of the pollen group. */
    public static final int OPEN = -2;

    private static final int FIRST_CANDIDATES = -3;
    private static final byte DIPLOID_GAMETE = 1;

    private int count;
    private int[] seed = new int[16];
    private int[] pollen = new int[16];
    private final Map<Integer, Integer> sports = new HashMap<>();
    private final Map<Integer, byte[]> genomes = new HashMap<>();
    private final List<Mixture> candidates = new ArrayList<>();
    private final Map<Mixture, Integer> known = new LinkedHashMap<>();
    private int[] pollenGroup;

    /** A new individual without known parents; its number. */
    public int add() {
        if (count == seed.length) {
            seed = Arrays.copyOf(seed, 2 * count);
            pollen = Arrays.copyOf(pollen, 2 * count);
        }
        seed[count] = UNKNOWN;
        pollen[count] = UNKNOWN;
        return count++;
    }

    /** How many individuals there are. */
    public int size() {
        return count;
    }

    /** Says who carried the seed. */
    public void seedParent(int who, int parent) {
        seed[who] = parent;
    }

    /** Says who gave the pollen. */
    public void pollenParent(int who, int parent) {
        pollen[who] = parent;
    }

    /** Says that two individuals are one genotype: the sport's own parents no longer count. */
    public void sport(int sport, int origin) {
        sports.put(sport, origin);
    }

    /** Says how many chromosome sets came from each parent: 1 and 1 unless told otherwise. */
    public void genomes(int who, int fromSeedParent, int fromPollenParent) {
        genomes.put(who, new byte[] {(byte) fromSeedParent, (byte) fromPollenParent});
    }

    /** A parent who is one of these, each as likely as the other. */
    public int oneOf(int... members) {
        double[] even = new double[members.length];
        Arrays.fill(even, 1.0 / members.length);
        return oneOf(members, even);
    }

    /** A parent who is one of these with these probabilities, which sum to 1. */
    public int oneOf(int[] members, double[] probabilities) {
        Mixture mixture = new Mixture(members.clone(), probabilities.clone(), Mixture.Kind.CANDIDATES);
        return known.computeIfAbsent(mixture, fresh -> {
            candidates.add(fresh);
            return FIRST_CANDIDATES - (candidates.size() - 1);
        });
    }

    /**
     * Says who may have given pollen where the pollen parent is open. Left alone, it is everybody who is named as a parent.
     * Of the group only those count who are no later a generation than the seed parent, so that nobody descends from
     * themselves, and not the seed parent itself, since apples, pears and most plums hardly take their own pollen.
     */
    public void pollenGroup(int[] members) {
        pollenGroup = members.clone();
    }

    /** The pedigree, parents first; a {@link PedigreeLoop} when somebody is their own ancestor. */
    public PedigreeGraph build() {
        return new ParentsFirst(this).graph();
    }

    int seedOf(int who) {
        return seed[who];
    }

    int pollenOf(int who) {
        return pollen[who];
    }

    int originOf(int who) {
        return sports.isEmpty() ? UNKNOWN : sports.getOrDefault(who, UNKNOWN);
    }

    byte seedGenomes(int who) {
        return genomes.isEmpty() || !genomes.containsKey(who) ? DIPLOID_GAMETE : genomes.get(who)[0];
    }

    byte pollenGenomes(int who) {
        return genomes.isEmpty() || !genomes.containsKey(who) ? DIPLOID_GAMETE : genomes.get(who)[1];
    }

    int[] pollenGroup() {
        return pollenGroup;
    }

    /** The candidates behind a parent number, or null when the number is no such thing. */
    Mixture candidatesOf(int parent) {
        return parent <= FIRST_CANDIDATES ? candidates.get(FIRST_CANDIDATES - parent) : null;
    }
}
