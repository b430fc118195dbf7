package pippinry.pedigree.internal.kinship;

/** Coancestry of all nodes from the definition, row by row: small pedigrees only. */
final class TabularMethod {
    private TabularMethod() {}

    static double[][] coancestry(PedigreeGraph graph) {
        double[][] f = new double[graph.nodes()][graph.nodes()];
        for (int x = 0; x < graph.nodes(); x++) {
            for (int y = 0; y < x; y++) {
                f[x][y] = graph.meanOfParents(x, f[y]);
                f[y][x] = f[x][y];
            }
            f[x][x] = graph.isMixture(x) ? graph.meanOfParents(x, f[x]) : drawnTwice(graph, x, f);
        }
        return f;
    }

    /** Two alleles drawn with replacement: the same copy, both by the seed parent, both by the pollen parent, or one by each. */
    private static double drawnTwice(PedigreeGraph graph, int x, double[][] f) {
        double s = graph.seedGenomes[x];
        double p = graph.pollenGenomes[x];
        int seed = graph.seed[x];
        int pollen = graph.pollen[x];
        double bothBySeed = s * (s - 1) * twoDifferent(graph, seed, f);
        double bothByPollen = p * (p - 1) * twoDifferent(graph, pollen, f);
        double oneByEach = seed < 0 || pollen < 0 ? 0 : 2 * s * p * f[seed][pollen];
        return (s + p + bothBySeed + bothByPollen + oneByEach) / ((s + p) * (s + p));
    }

    private static double twoDifferent(PedigreeGraph graph, int parent, double[][] f) {
        if (parent < 0) return 0;
        if (!graph.isMixture(parent)) {
            double k = graph.ploidy(parent);
            return (k * f[parent][parent] - 1) / (k - 1);
        }
        Mixture group = graph.mixture(parent);
        double mean = 0;
        for (int i = 0; i < group.members().length; i++) {
            mean += group.probabilities()[i] * twoDifferent(graph, group.members()[i], f);
        }
        return mean;
    }
}
