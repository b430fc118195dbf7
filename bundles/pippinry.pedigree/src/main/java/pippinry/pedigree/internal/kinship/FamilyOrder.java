package pippinry.pedigree.internal.kinship;

import java.util.stream.IntStream;

/** The nodes by generation, within it by seed parent, within that by pollen parent: full sibs stand side by side. Counting sorts, so the cost is the number of nodes. */
final class FamilyOrder {
    private final int[] order;
    private final int[] firstOfGeneration;

    FamilyOrder(PedigreeGraph graph) {
        int nodes = graph.nodes();
        int[] byPollen = sorted(IntStream.range(0, nodes).toArray(), graph.pollen);
        int[] bySeed = sorted(byPollen, graph.seed);
        this.order = sorted(bySeed, graph.generation);
        int generations = nodes == 0 ? 0 : graph.generation[order[nodes - 1]] + 1;
        this.firstOfGeneration = new int[generations + 1];
        for (int node = 0; node < nodes; node++) firstOfGeneration[graph.generation[node] + 1]++;
        for (int g = 1; g <= generations; g++) firstOfGeneration[g] += firstOfGeneration[g - 1];
    }

    int generations() {
        return firstOfGeneration.length - 1;
    }

    int start(int generation) {
        return firstOfGeneration[generation];
    }

    int end(int generation) {
        return firstOfGeneration[generation + 1];
    }

    int node(int place) {
        return order[place];
    }

    private static int[] sorted(int[] nodes, int[] key) {
        int keys = 0;
        for (int k : key) keys = Math.max(keys, k + 2);
        int[] start = new int[keys + 1];
        for (int node : nodes) start[key[node] + 2]++;
        for (int k = 1; k <= keys; k++) start[k] += start[k - 1];
        int[] sorted = new int[nodes.length];
        for (int node : nodes) sorted[start[key[node] + 1]++] = node;
        return sorted;
    }
}
