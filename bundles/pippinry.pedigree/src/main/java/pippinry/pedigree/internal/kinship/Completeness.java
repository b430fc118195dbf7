package pippinry.pedigree.internal.kinship;

/**
 * How much of everybody's pedigree is known. A parent who is one of several candidates counts as known, and further back as
 * the candidates do on average; an open pollen parent counts as unknown, since nobody named it. Cost: generations times
 * nodes.
 */
public final class Completeness {
    private final PedigreeGraph graph;
    private final int depth;
    private final double[] knownSums;
    private final double[] generations;

    private Completeness(PedigreeGraph graph, int depth) {
        this.graph = graph;
        this.depth = depth;
        this.knownSums = new double[graph.nodes()];
        double[] known = named();
        for (int back = 0; back < depth; back++) {
            for (int node = 0; node < known.length; node++) knownSums[node] += known[node];
            known = oneGenerationBack(known);
        }
        this.generations = equivalentGenerations();
    }

    /** Looks back so many generations, at least one. */
    public static Completeness of(PedigreeGraph graph, int depth) {
        if (depth < 1)
            throw new IllegalArgumentException("looking back " + depth + " generations; at least 1 expected");
        return new Completeness(graph, depth);
    }

    private double[] named() {
        double[] named = new double[graph.nodes()];
        for (int node = 0; node < named.length; node++) named[node] = isOpen(node) ? 0 : 1;
        return named;
    }

    private double[] oneGenerationBack(double[] known) {
        double[] further = new double[known.length];
        for (int node = 0; node < known.length; node++) {
            if (isOpen(node)) continue;
            further[node] = graph.meanOfParents(node, graph.isMixture(node) ? further : known);
        }
        return further;
    }

    private double[] equivalentGenerations() {
        double[] named = named();
        double[] equivalent = new double[named.length];
        for (int node = 0; node < named.length; node++) {
            if (isOpen(node)) continue;
            double parents = graph.isMixture(node) ? 0 : graph.meanOfParents(node, named);
            equivalent[node] = parents + graph.meanOfParents(node, equivalent);
        }
        return equivalent;
    }

    private boolean isOpen(int node) {
        return graph.isMixture(node) && graph.mixture(node).open();
    }

    /**
     * From 0 (a parent is unknown) to 1 (every ancestor of these generations is known): the harmonic mean of what is known on the
     * side of the seed parent and on that of the pollen parent. J. W. MacCluer, A. J. Boyce, B. Dyke, L. R. Weitkamp, D. W. Pfennig
     * and C. J. Parsons (1983) Inbreeding and pedigree structure in Standardbred horses, Journal of Heredity 74:394-399.
     */
    public double index(int individual) {
        int node = graph.node(individual);
        double bySeed = side(graph.seed[node]);
        double byPollen = side(graph.pollen[node]);
        return bySeed + byPollen == 0 ? 0 : 2 * bySeed * byPollen / (bySeed + byPollen);
    }

    private double side(int parent) {
        return parent < 0 ? 0 : knownSums[parent] / depth;
    }

    /**
     * The generations of a pedigree that would be complete and hold as much: the sum over all known ancestors of the part of the
     * genome they stand for. D. Boichard, L. Maignel and E. Verrier (1997), see {@link MajorAncestors}.
     */
    public double equivalentGenerations(int individual) {
        return generations[graph.node(individual)];
    }
}
