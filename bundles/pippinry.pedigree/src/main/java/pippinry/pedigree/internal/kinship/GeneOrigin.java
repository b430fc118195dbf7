package pippinry.pedigree.internal.kinship;

/** Where the genes of a group come from. */
final class GeneOrigin {
    private GeneOrigin() {}

    /** By node, the share of the group's genes that came through it; a member of the group itself counts with what it is of the group. */
    static double[] shares(PedigreeGraph graph, int[] group) {
        double[] shares = new double[graph.nodes()];
        for (int who : group) shares[graph.node(who)] += 1.0 / group.length;
        for (int node = shares.length - 1; node >= 0; node--) {
            if (shares[node] != 0) graph.passToParents(node, shares[node], shares);
        }
        return shares;
    }
}
