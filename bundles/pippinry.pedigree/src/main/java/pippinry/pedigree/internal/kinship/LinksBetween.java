package pippinry.pedigree.internal.kinship;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * The links that make two individuals related: every link from a descendant to a parent on a way from one of the two up to an
 * ancestor they share. If one of these is wrong, so is their coancestry. Cost: the links above the two.
 */
public final class LinksBetween {
    /** Whose side a link is on. */
    public enum Side {
        SEED,
        POLLEN
    }

    /** A link from a child to its parent, or to the group its parent is one of. */
    public record Link(int child, Side side) {}

    private final PedigreeGraph graph;
    private final BitSet common;
    private final BitSet leads = new BitSet();
    private final List<Link> links = new ArrayList<>();

    private LinksBetween(PedigreeGraph graph, BitSet common) {
        this.graph = graph;
        this.common = common;
    }

    /** The links between two individuals, latest generation first; for one and the same, those that make it inbred. */
    public static List<Link> of(PedigreeGraph graph, int a, int b) {
        int one = graph.node(a);
        int other = graph.node(b);
        return one == other ? withinOne(graph, one) : between(graph, one, other);
    }

    private static List<Link> withinOne(PedigreeGraph graph, int node) {
        int seed = graph.seed[node];
        int pollen = graph.pollen[node];
        if (seed < 0 || pollen < 0) return List.of();
        List<Link> above = seed == pollen ? List.of() : between(graph, seed, pollen);
        if (above.isEmpty() && seed != pollen && !descends(graph, seed, pollen)) return List.of();
        List<Link> links = new ArrayList<>(
                List.of(new Link(graph.individual(node), Side.SEED), new Link(graph.individual(node), Side.POLLEN)));
        links.addAll(above);
        return links;
    }

    private static boolean descends(PedigreeGraph graph, int a, int b) {
        return above(graph, a).get(b) || above(graph, b).get(a);
    }

    private static List<Link> between(PedigreeGraph graph, int one, int other) {
        BitSet aboveOne = above(graph, one);
        BitSet aboveOther = above(graph, other);
        BitSet common = (BitSet) aboveOne.clone();
        common.and(aboveOther);
        aboveOne.or(aboveOther);
        LinksBetween way = new LinksBetween(graph, common);
        way.climb(aboveOne);
        return way.links;
    }

    /** A node and all its ancestors. */
    private static BitSet above(PedigreeGraph graph, int node) {
        BitSet above = new BitSet(node + 1);
        above.set(node);
        for (int at = node; at >= 0; at = above.previousSetBit(at - 1)) {
            for (int parent : parents(graph, at)) above.set(parent);
            if (at == 0) break;
        }
        return above;
    }

    private static int[] parents(PedigreeGraph graph, int node) {
        if (graph.isMixture(node)) return graph.mixture(node).members();
        int seed = graph.seed[node];
        int pollen = graph.pollen[node];
        if (seed < 0) return pollen < 0 ? new int[0] : new int[] {pollen};
        return pollen < 0 ? new int[] {seed} : new int[] {seed, pollen};
    }

    private void climb(BitSet nodes) {
        for (int node = nodes.nextSetBit(0); node >= 0; node = nodes.nextSetBit(node + 1)) {
            if (common.get(node)) leads.set(node);
            for (int parent : parents(graph, node)) if (leads.get(parent)) leads.set(node);
        }
        for (int node = nodes.previousSetBit(graph.nodes()); node >= 0; node = nodes.previousSetBit(node - 1)) {
            if (!common.get(node) && !graph.isMixture(node)) note(node);
            if (node == 0) break;
        }
    }

    private void note(int node) {
        int child = graph.individual(node);
        if (graph.seed[node] >= 0 && leads.get(graph.seed[node])) links.add(new Link(child, Side.SEED));
        if (graph.pollen[node] >= 0 && leads.get(graph.pollen[node])) links.add(new Link(child, Side.POLLEN));
    }
}
