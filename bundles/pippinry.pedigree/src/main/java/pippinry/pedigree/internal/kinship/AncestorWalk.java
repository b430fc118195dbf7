package pippinry.pedigree.internal.kinship;

import java.util.Arrays;

/**
 * One node's ancestors and the share of its genome that comes by each of them: a row of the triangular factor of the
 * relationship matrix. They are visited from the latest generation to the earliest (the longest ancestral path), so each
 * of them just once: M. Sargolzaei and H. Iwaisaki (2005) Comparison of four direct algorithms for computing inbreeding
 * coefficients, Animal Science Journal 76:401-406. Cost: the number of ancestors. A pool of open pollen parents is noted
 * and not entered ({@link PollenPools} knows the rest). Not for several threads.
 */
final class AncestorWalk {
    private static final int END = -1;

    private final PedigreeGraph graph;
    private final double[] share;
    private final int[] seenIn;
    private final int[] nextOfGeneration;
    private final int[] firstOfGeneration;
    private final int[] visited;
    private int count;
    private int walk;
    private int latest;

    AncestorWalk(PedigreeGraph graph) {
        this.graph = graph;
        int ancestors = graph.ancestors();
        this.share = new double[ancestors];
        this.seenIn = new int[ancestors];
        this.nextOfGeneration = new int[ancestors];
        this.visited = new int[ancestors];
        this.firstOfGeneration = new int[Arrays.stream(graph.generation).max().orElse(0) + 1];
        Arrays.fill(firstOfGeneration, END);
    }

    /** Walks from a node, which is among its own ancestors with share 1 when it has offspring at all. */
    void from(int node) {
        walk++;
        count = 0;
        latest = 0;
        if (node < graph.ancestors()) reach(node, 1);
        else pass(node, 1);
        for (int generation = latest; generation >= 0; generation--) empty(generation);
    }

    private void empty(int generation) {
        int node = firstOfGeneration[generation];
        firstOfGeneration[generation] = END;
        while (node != END) {
            visited[count++] = node;
            pass(node, share[node]);
            node = nextOfGeneration[node];
        }
    }

    private void pass(int node, double amount) {
        if (graph.isMixture(node)) {
            passToMembers(graph.mixture(node), amount);
            return;
        }
        int seed = graph.seed[node];
        int pollen = graph.pollen[node];
        if (seed >= 0) reach(seed, amount * graph.seedShare(node));
        if (pollen >= 0) reach(pollen, amount * graph.pollenShare(node));
    }

    private void passToMembers(Mixture group, double amount) {
        if (group.kind() == Mixture.Kind.POOL) return;
        for (int i = 0; i < group.members().length; i++) {
            reach(group.members()[i], amount * group.probabilities()[i]);
        }
    }

    private void reach(int node, double amount) {
        if (seenIn[node] == walk) {
            share[node] += amount;
            return;
        }
        int generation = graph.generation[node];
        seenIn[node] = walk;
        share[node] = amount;
        nextOfGeneration[node] = firstOfGeneration[generation];
        firstOfGeneration[generation] = node;
        if (generation > latest) latest = generation;
    }

    int count() {
        return count;
    }

    /** The ancestor met at this place of the walk. */
    int visited(int place) {
        return visited[place];
    }

    /** The share that comes by this ancestor, 0 when the walk did not meet it. */
    double share(int node) {
        return seenIn[node] == walk ? share[node] : 0;
    }

    /** The sum over common ancestors of both shares times what the ancestor brings of its own. */
    double common(AncestorWalk other, double[] own) {
        double sum = 0;
        for (int place = 0; place < count; place++) {
            int node = visited[place];
            if (other.seenIn[node] == other.walk) sum += share[node] * other.share[node] * own[node];
        }
        return sum;
    }
}
