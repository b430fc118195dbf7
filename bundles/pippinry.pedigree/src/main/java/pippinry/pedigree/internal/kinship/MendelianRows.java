package pippinry.pedigree.internal.kinship;

import java.util.Arrays;

/** What each genotype brings of its own, as a row over the genotypes: 1 for itself less the shares of its parents, rows descending. */
final class MendelianRows {
    private final Kinship kinship;
    private final PedigreeGraph graph;
    private final int[] rowOfNode;
    private int[] rows = new int[8];
    private double[] shares = new double[8];
    private int count;
    private double own;

    MendelianRows(Kinship kinship, int[] rowOfNode) {
        this.kinship = kinship;
        this.graph = kinship.graph();
        this.rowOfNode = rowOfNode;
    }

    /** Goes to a node, a group of possible parents having an empty row; false when there is no such node. */
    boolean to(int node) {
        if (node == graph.nodes()) return false;
        count = 0;
        if (graph.isMixture(node)) return true;
        own = kinship.ofItsOwn(node);
        put(rowOfNode[node], 1);
        parent(graph.seed[node], -graph.seedShare(node));
        parent(graph.pollen[node], -graph.pollenShare(node));
        return true;
    }

    private void parent(int parent, double share) {
        if (parent < 0) return;
        if (!graph.isMixture(parent)) {
            put(rowOfNode[parent], share);
            return;
        }
        Mixture group = graph.mixture(parent);
        for (int i = 0; i < group.members().length; i++) {
            parent(group.members()[i], share * group.probabilities()[i]);
        }
    }

    /** Keeps the rows descending and each once; a pedigree's rows are short. */
    private void put(int row, double share) {
        int at = count;
        while (at > 0 && rows[at - 1] < row) at--;
        if (at > 0 && rows[at - 1] == row) {
            shares[at - 1] += share;
            return;
        }
        if (count == rows.length) grow();
        System.arraycopy(rows, at, rows, at + 1, count - at);
        System.arraycopy(shares, at, shares, at + 1, count - at);
        rows[at] = row;
        shares[at] = share;
        count++;
    }

    private void grow() {
        rows = Arrays.copyOf(rows, 2 * count);
        shares = Arrays.copyOf(shares, 2 * count);
    }

    int count() {
        return count;
    }

    int row(int place) {
        return rows[place];
    }

    double share(int place) {
        return shares[place];
    }

    double own() {
        return own;
    }
}
