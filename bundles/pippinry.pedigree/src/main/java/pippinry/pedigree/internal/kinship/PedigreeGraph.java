package pippinry.pedigree.internal.kinship;

import java.util.HashMap;
import java.util.Map;

/**
 * A pedigree sorted parents first. Individuals that share a genotype (a sport and its origin) share a node; a group of
 * possible parents is a node of its own, the mean of its members, standing after them. Nodes below {@link #ancestors()}
 * have offspring. Founders are simply nodes without parents.
 */
public final class PedigreeGraph {
    static final int NOBODY = PossibleParents.NOBODY;

    final int[] nodeOf;
    final int[] individualOf;
    final int[] seed;
    final int[] pollen;
    final byte[] seedGenomes;
    final byte[] pollenGenomes;
    final int[] generation;
    private final int ancestors;
    private final Map<Integer, Mixture> mixtures = new HashMap<>();
    private final boolean[] mixture;

    PedigreeGraph(int individuals, int nodes, int ancestors) {
        this.nodeOf = new int[individuals];
        this.individualOf = new int[nodes];
        this.seed = new int[nodes];
        this.pollen = new int[nodes];
        this.seedGenomes = new byte[nodes];
        this.pollenGenomes = new byte[nodes];
        this.generation = new int[nodes];
        this.mixture = new boolean[nodes];
        this.ancestors = ancestors;
    }

    void putMixture(int node, Mixture group) {
        individualOf[node] = NOBODY;
        seed[node] = NOBODY;
        pollen[node] = NOBODY;
        mixture[node] = true;
        mixtures.put(node, group);
    }

    /** How many individuals were told of. */
    public int individuals() {
        return nodeOf.length;
    }

    /** The node of an individual. */
    public int node(int individual) {
        return nodeOf[individual];
    }

    /** How many nodes there are: genotypes and groups of possible parents. */
    public int nodes() {
        return seed.length;
    }

    /** How many nodes have offspring; they are the first ones. */
    public int ancestors() {
        return ancestors;
    }

    /** The individual of a node (for a sport: its origin), or a negative number for a group of possible parents. */
    public int individual(int node) {
        return individualOf[node];
    }

    boolean isFounder(int node) {
        return seed[node] < 0 && pollen[node] < 0 && !mixture[node];
    }

    boolean isMixture(int node) {
        return mixture[node];
    }

    Mixture mixture(int node) {
        return mixtures.get(node);
    }

    int ploidy(int node) {
        return seedGenomes[node] + pollenGenomes[node];
    }

    /** The part of the genome that came by the seed parent. */
    double seedShare(int node) {
        return (double) seedGenomes[node] / ploidy(node);
    }

    double pollenShare(int node) {
        return (double) pollenGenomes[node] / ploidy(node);
    }

    /** Adds to each parent its share of what the node carries. */
    void passToParents(int node, double amount, double[] carried) {
        if (mixture[node]) {
            Mixture group = mixtures.get(node);
            for (int i = 0; i < group.members().length; i++) {
                carried[group.members()[i]] += amount * group.probabilities()[i];
            }
            return;
        }
        if (seed[node] >= 0) carried[seed[node]] += amount * seedShare(node);
        if (pollen[node] >= 0) carried[pollen[node]] += amount * pollenShare(node);
    }

    /** The mean over the parents of what they carry, each by its share; an unknown parent carries nothing. */
    double meanOfParents(int node, double[] carried) {
        if (mixture[node]) {
            Mixture group = mixtures.get(node);
            double mean = 0;
            for (int i = 0; i < group.members().length; i++) {
                mean += group.probabilities()[i] * carried[group.members()[i]];
            }
            return mean;
        }
        double mean = 0;
        if (seed[node] >= 0) mean += seedShare(node) * carried[seed[node]];
        if (pollen[node] >= 0) mean += pollenShare(node) * carried[pollen[node]];
        return mean;
    }
}
