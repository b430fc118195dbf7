package pippinry.pedigree.internal.kinship;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The ancestors, founders or not, that together explain a group, each by what it adds to those named before it: D. Boichard,
 * L. Maignel and E. Verrier (1997) The value of using probabilities of gene origin to measure genetic variability in a
 * population, Genetics Selection Evolution 29:5-23. Unlike the effective number of founders this sees bottlenecks. Each round
 * names the ancestor with the largest part not yet explained and cuts it from its own parents. Cost: rounds times the
 * ancestors of the group.
 *
 * @param parts in the order they were named
 * @param unexplained what is left when the rounds were limited; 0 when nothing is
 */
public record MajorAncestors(List<Part> parts, double unexplained) {
    private static final double NOTHING = 1e-12;

    /**
     * What an ancestor adds.
     *
     * @param individual the ancestor
     * @param part of the group's genes, from 0 to 1
     */
    public record Part(int individual, double part) {}

    public MajorAncestors {
        parts = List.copyOf(parts);
    }

    /** The ancestors of a group, at most so many. */
    public static MajorAncestors of(PedigreeGraph graph, int[] group, int atMost) {
        Rounds rounds = new Rounds(graph, group);
        List<Part> parts = new ArrayList<>();
        double left = 1;
        while (parts.size() < atMost && left > NOTHING) {
            Part next = rounds.next();
            if (next.part() <= NOTHING) break;
            parts.add(next);
            left -= next.part();
        }
        return new MajorAncestors(parts, left > NOTHING ? left : 0);
    }

    /** 1 over the sum of the squared parts, what is unexplained taken as countless small ancestors: the largest it can be. */
    public double effectiveNumber() {
        return 1 / sumOfSquares();
    }

    /**
     * The smallest the effective number can be: what is unexplained taken as ancestors as large as the last one named. The same
     * as {@link #effectiveNumber()} when nothing is left.
     */
    public double effectiveNumberAtLeast() {
        double last = parts.isEmpty() ? 1 : parts.get(parts.size() - 1).part();
        return 1 / (sumOfSquares() + unexplained * last);
    }

    private double sumOfSquares() {
        double sum = 0;
        for (Part part : parts) sum += part.part() * part.part();
        return sum;
    }

    private static final class Rounds {
        private final PedigreeGraph graph;
        private final double[] ofGroup;
        private final int[] ancestors;
        private final boolean[] named;
        private final double[] through;
        private final double[] explained;

        Rounds(PedigreeGraph graph, int[] group) {
            this.graph = graph;
            this.ofGroup = new double[graph.nodes()];
            for (int who : group) ofGroup[graph.node(who)] += 1.0 / group.length;
            double[] shares = GeneOrigin.shares(graph, group);
            this.ancestors = IntStream.range(0, shares.length)
                    .filter(node -> shares[node] != 0)
                    .toArray();
            this.named = new boolean[graph.nodes()];
            this.through = new double[graph.nodes()];
            this.explained = new double[graph.nodes()];
        }

        Part next() {
            reckonThrough();
            reckonExplained();
            int best = -1;
            double most = 0;
            for (int node : ancestors) {
                double adds = named[node] || graph.isMixture(node) ? 0 : through[node] * (1 - explained[node]);
                if (adds > most + NOTHING) {
                    most = adds;
                    best = node;
                }
            }
            if (best < 0) return new Part(-1, 0);
            named[best] = true;
            return new Part(graph.individual(best), most);
        }

        private void reckonThrough() {
            for (int node : ancestors) through[node] = ofGroup[node];
            for (int i = ancestors.length - 1; i >= 0; i--) {
                int node = ancestors[i];
                if (!named[node]) graph.passToParents(node, through[node], through);
            }
        }

        private void reckonExplained() {
            for (int node : ancestors) explained[node] = named[node] ? 1 : graph.meanOfParents(node, explained);
        }
    }
}
