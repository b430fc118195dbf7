package pippinry.pedigree.internal.kinship;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The founders of a group and how much of it comes from each. An unknown parent of somebody whose other parent is known is a
 * founder too.
 *
 * @param shares largest first; they sum to 1
 */
public record Founders(List<Share> shares) {
    private static final double NOTHING = 1e-13;

    /** Which founder is meant: the individual itself, or a parent of it that nobody knows. */
    public enum Who {
        ITSELF,
        UNKNOWN_SEED_PARENT,
        UNKNOWN_POLLEN_PARENT
    }

    /**
     * A founder's part of the group.
     *
     * @param individual the founder, or the child whose parent the founder is
     * @param who which of these
     * @param part from 0 to 1
     */
    public record Share(int individual, Who who, double part) {}

    public Founders {
        shares = List.copyOf(shares);
    }

    /** The founders of a group of at least one individual, each member counting the same. */
    public static Founders of(PedigreeGraph graph, int[] group) {
        double[] through = GeneOrigin.shares(graph, group);
        List<Share> shares = new ArrayList<>();
        for (int node = 0; node < through.length; node++) {
            if (through[node] > NOTHING && !graph.isMixture(node)) add(graph, node, through[node], shares);
        }
        shares.sort(Comparator.comparingDouble(Share::part)
                .reversed()
                .thenComparing(Share::individual)
                .thenComparing(Share::who));
        return new Founders(shares);
    }

    private static void add(PedigreeGraph graph, int node, double part, List<Share> shares) {
        int who = graph.individual(node);
        if (graph.isFounder(node)) {
            shares.add(new Share(who, Who.ITSELF, part));
        } else if (graph.seed[node] < 0) {
            shares.add(new Share(who, Who.UNKNOWN_SEED_PARENT, part * graph.seedShare(node)));
        } else if (graph.pollen[node] < 0) {
            shares.add(new Share(who, Who.UNKNOWN_POLLEN_PARENT, part * graph.pollenShare(node)));
        }
    }

    /**
     * How many founders, each giving the same, would give the same chance that two alleles drawn from the group stem from one
     * founder: 1 over the sum of the squared shares. R. C. Lacy (1989) Analysis of founder representation in pedigrees: founder
     * equivalents and founder genome equivalents, Zoo Biology 8:111-123.
     */
    public double effectiveNumber() {
        double sum = 0;
        for (Share share : shares) sum += share.part() * share.part();
        return 1 / sum;
    }

    /**
     * How many unrelated founders, nothing of them lost, would be as diverse as the group: 1 over twice the mean coancestry,
     * each with itself included. R. C. Lacy (1989), as above; in this form A. Caballero and M. A. Toro (2000) Interrelations
     * between effective population size and other pedigree tools for the management of conserved populations, Genetical
     * Research 75:331-343.
     */
    public static double genomeEquivalents(Kinship kinship, int[] group) {
        return 1 / (2 * kinship.meanCoancestry(group));
    }
}
