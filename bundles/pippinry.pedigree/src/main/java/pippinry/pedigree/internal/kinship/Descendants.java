package pippinry.pedigree.internal.kinship;

import java.util.BitSet;

/** Who descends from some individuals, or may: what is doubted of those is doubted of all these. Cost: the number of nodes. */
public final class Descendants {
    private Descendants() {}

    /** The individuals themselves, their sports and everybody below them; a pool of open pollen parents passes nothing on. */
    public static BitSet of(PedigreeGraph graph, BitSet individuals) {
        BitSet nodes = new BitSet(graph.nodes());
        individuals.stream().forEach(who -> nodes.set(graph.node(who)));
        for (int node = 0; node < graph.nodes(); node++) if (inherits(graph, node, nodes)) nodes.set(node);
        BitSet below = new BitSet(graph.individuals());
        for (int who = 0; who < graph.individuals(); who++) if (nodes.get(graph.node(who))) below.set(who);
        return below;
    }

    private static boolean inherits(PedigreeGraph graph, int node, BitSet nodes) {
        if (!graph.isMixture(node)) {
            return graph.seed[node] >= 0 && nodes.get(graph.seed[node])
                    || graph.pollen[node] >= 0 && nodes.get(graph.pollen[node]);
        }
        if (graph.mixture(node).open()) return false;
        for (int member : graph.mixture(node).members()) if (nodes.get(member)) return true;
        return false;
    }
}
