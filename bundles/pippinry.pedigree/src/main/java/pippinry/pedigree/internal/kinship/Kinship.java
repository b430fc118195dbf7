package pippinry.pedigree.internal.kinship;

/**
 * Relationship and inbreeding of everybody in a pedigree. Coancestry f(a, b) is the chance that an allele drawn from a and
 * one drawn from b are alike by descent; f(a, a) = (1 + F)/2 for a diploid; a sport is the same as its origin. May be used
 * by several threads.
 */
public final class Kinship {
    private static final double LEAST_OF_ITS_OWN = 1e-6;

    final PedigreeGraph graph;
    final double[] inbreeding;
    final double[] self;
    final double[] own;
    private final PollenPools pools;

    Kinship(PedigreeGraph graph, double[] inbreeding, double[] self, double[] own, PollenPools pools) {
        this.graph = graph;
        this.inbreeding = inbreeding;
        this.self = self;
        this.own = own;
        this.pools = pools;
    }

    /** Reckons the inbreeding of everybody; the rest is reckoned when asked for. */
    public static Kinship of(PedigreeGraph graph) {
        return Inbreeding.of(graph);
    }

    /** The pedigree that was reckoned. */
    public PedigreeGraph graph() {
        return graph;
    }

    /** F, from 0 to 1: the chance that two different alleles at a locus are alike by descent. */
    public double inbreeding(int individual) {
        return inbreeding[graph.node(individual)];
    }

    /** Coancestry of one pair; for many pairs use {@link #pairs()}. */
    public double coancestry(int a, int b) {
        return pairs().coancestry(a, b);
    }

    /** For the coancestry of many pairs in turn, by one thread. */
    public Pairs pairs() {
        return new Pairs();
    }

    /** Mean coancestry of all pairs of a group, each with itself included. Cost: the number of nodes. */
    public double meanCoancestry(int[] group) {
        return meanCoancestry(group, group);
    }

    /**
     * Mean coancestry of the members of one group with those of another: x'Ay/2 with A = TDT', after J.-J. Colleau (2002) An
     * indirect approach to the extensive calculation of relationship coefficients, Genetics Selection Evolution 34:409-421.
     * Cost: the number of nodes.
     */
    public double meanCoancestry(int[] group, int[] other) {
        double[] x = GeneOrigin.shares(graph, group);
        double[] y = group == other ? x : GeneOrigin.shares(graph, other);
        double sum = 0;
        for (int node = 0; node < x.length; node++) sum += x[node] * y[node] * own[node];
        return sum / 2;
    }

    /** The mean coancestry of a group with each individual. Cost: the number of nodes. */
    public double[] coancestryWith(int[] group) {
        double[] column = GeneOrigin.shares(graph, group);
        for (int node = 0; node < column.length; node++) {
            column[node] = column[node] * own[node] + graph.meanOfParents(node, column);
        }
        double[] byIndividual = new double[graph.individuals()];
        for (int who = 0; who < byIndividual.length; who++) byIndividual[who] = column[graph.node(who)] / 2;
        return byIndividual;
    }

    /**
     * What a genotype brings beyond its parents, never less than a millionth: who comes from wholly inbred parents, or has both of two
     * unreduced gametes, is the same as every sib, and the matrix would have no inverse.
     */
    double ofItsOwn(int node) {
        return Math.max(LEAST_OF_ITS_OWN, own[node]);
    }

    /** The natural logarithm of the determinant of the relationship matrix of all genotypes; summed with Kahan's correction. */
    public double logDeterminant() {
        double sum = 0;
        double lost = 0;
        for (int node = 0; node < own.length; node++) {
            if (graph.isMixture(node)) continue;
            double log = Math.log(ofItsOwn(node)) - lost;
            double next = sum + log;
            lost = (next - sum) - log;
            sum = next;
        }
        return sum;
    }

    /** Asks for pairs in turn; cheapest when those of one a follow each other. */
    public final class Pairs {
        private final PairRelationship pair = new PairRelationship(graph, own, self, pools);

        private Pairs() {}

        /** f(a, b). */
        public double coancestry(int a, int b) {
            return pair.between(graph.node(a), graph.node(b)) / 2;
        }
    }
}
