package pippinry.pedigree.internal.kinship;

import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.IntStream;

/**
 * The inbreeding of everybody, generation by generation, each family once.
 *
 * <p>The relationship matrix is A = T D T' (C. R. Henderson (1976) A simple method for computing the inverse of a numerator
 * relationship matrix used in prediction of breeding values, Biometrics 32:69-83). A seedling's inbreeding is half the
 * relationship of its parents, summed over their common ancestors as T. H. E. Meuwissen and Z. Luo (1992) Computing
 * inbreeding coefficients in large populations, Genetics Selection Evolution 24:305-313, do, in the order of {@link
 * AncestorWalk}. Full sibs share the result; seed parents are walked once for all their mates of a generation. Cost: the
 * ancestors of both parents for each distinct family. Families of one generation are spread over the processors.
 *
 * <p>A parent known only as one of a group is the mean of the group: C. R. Henderson (1988) Use of an average numerator
 * relationship matrix for multiple-sire joining, Journal of Animal Science 66:1614-1621.
 *
 * <p>Other ploidies: with s and p chromosome sets from seed and pollen parent, k = s + p, F = [s(s-1)F(seed) +
 * p(p-1)F(pollen) + 2sp f(seed, pollen)] / k(k-1) is the chance that two different alleles at a locus are alike by descent:
 * R. J. Kerr, L. Li, B. Tier, G. W. Dutkowski and T. A. McRae (2012) Use of the numerator relationship matrix in genetic
 * analysis of autopolyploid species, Theoretical and Applied Genetics 124:1271-1282; M. G. Hamilton and R. J. Kerr (2018)
 * Computation of the inverse additive relationship matrix for autopolyploid and multiple-ploidy populations, the same
 * 131:851-860. Assumed: no double reduction, and an unreduced gamete carries two different alleles of its parent.
 *
 * <p>Assumptions: founders are unrelated and not inbred.
 */
final class Inbreeding {
    private static final int WORTH_SHARING_OUT = 2048;

    private final PedigreeGraph graph;
    private final FamilyOrder families;
    private final double[] inbreeding;
    private final double[] self;
    private final double[] own;
    private final PollenPools pools;
    private final Queue<PairRelationship> pairs = new ConcurrentLinkedQueue<>();

    private Inbreeding(PedigreeGraph graph) {
        this.graph = graph;
        this.families = new FamilyOrder(graph);
        this.inbreeding = new double[graph.nodes()];
        this.self = new double[graph.nodes()];
        this.own = new double[graph.nodes()];
        this.pools = new PollenPools(graph);
    }

    static Kinship of(PedigreeGraph graph) {
        Inbreeding reckoning = new Inbreeding(graph);
        for (int g = 0; g < reckoning.families.generations(); g++) reckoning.generation(g);
        return new Kinship(graph, reckoning.inbreeding, reckoning.self, reckoning.own, reckoning.pools);
    }

    private void generation(int g) {
        int start = groups(families.start(g), families.end(g));
        int end = families.end(g);
        int parts = 1 + (end - start) / WORTH_SHARING_OUT;
        int[] cuts = new int[parts + 1];
        for (int part = 0; part <= parts; part++) {
            cuts[part] = afterFamiliesOfOneSeedParent(start + (int) ((long) (end - start) * part / parts), start, end);
        }
        IntStream.range(0, parts).parallel().forEach(part -> part(cuts[part], cuts[part + 1]));
    }

    private int afterFamiliesOfOneSeedParent(int place, int start, int end) {
        int cut = place;
        while (cut > start && cut < end && graph.seed[families.node(cut)] == graph.seed[families.node(cut - 1)]) cut++;
        return cut;
    }

    private void part(int start, int end) {
        PairRelationship pair = borrow();
        int last = -1;
        double parents = 0;
        for (int place = start; place < end; place++) {
            int node = families.node(place);
            if (last < 0 || !fullSibs(last, node)) parents = coancestryOfParents(node, pair);
            individual(node, parents);
            last = node;
        }
        pairs.add(pair);
    }

    private PairRelationship borrow() {
        PairRelationship used = pairs.poll();
        return used == null ? new PairRelationship(graph, own, self, pools) : used;
    }

    private boolean fullSibs(int a, int b) {
        return graph.seed[a] == graph.seed[b] && graph.pollen[a] == graph.pollen[b];
    }

    private double coancestryOfParents(int node, PairRelationship pair) {
        int seed = graph.seed[node];
        int pollen = graph.pollen[node];
        return seed < 0 || pollen < 0 ? 0 : pair.between(seed, pollen) / 2;
    }

    private void individual(int node, double coancestryOfParents) {
        double s = graph.seedGenomes[node];
        double p = graph.pollenGenomes[node];
        double k = s + p;
        double withinGametes =
                s * (s - 1) * of(inbreeding, graph.seed[node]) + p * (p - 1) * of(inbreeding, graph.pollen[node]);
        double alike = k == 1 ? 0 : (withinGametes + 2 * s * p * coancestryOfParents) / (k * (k - 1));
        inbreeding[node] = alike;
        self[node] = 2 * (1 + (k - 1) * alike) / k;
        own[node] =
                (2 * k + 2 * withinGametes - s * s * of(self, graph.seed[node]) - p * p * of(self, graph.pollen[node]))
                        / (k * k);
    }

    private static double of(double[] values, int parent) {
        return parent < 0 ? 0 : values[parent];
    }

    /** Groups of possible parents have no parents themselves and so come first; later generations need them. */
    private int groups(int start, int end) {
        int place = start;
        PairRelationship pair = borrow();
        while (place < end && graph.isMixture(families.node(place))) group(families.node(place++), pair);
        pairs.add(pair);
        return place;
    }

    private void group(int node, PairRelationship pair) {
        inbreeding[node] = graph.meanOfParents(node, inbreeding);
        self[node] = graph.mixture(node).kind() == Mixture.Kind.POOL ? pools.add(node, own) : pair.ofMembers(node);
        own[node] = 0;
    }
}
