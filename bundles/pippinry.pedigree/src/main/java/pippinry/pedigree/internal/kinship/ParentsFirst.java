package pippinry.pedigree.internal.kinship;

import java.util.Arrays;
import java.util.List;

/**
 * Sorts the nodes of a draft: first those with offspring, by generation, then those without. So every node comes after its
 * parents, and the ancestors, which every reckoning walks through, lie close together.
 */
final class ParentsFirst {
    private static final int NOBODY = PossibleParents.NOBODY;

    private final PedigreeDraft draft;
    private final int individuals;
    private final int[] self;
    private final int[] seed;
    private final int[] pollen;
    private final List<Mixture> mixtures;
    private final int[] generation;

    ParentsFirst(PedigreeDraft draft) {
        PossibleParents parents = new PossibleParents(draft);
        this.draft = draft;
        this.individuals = draft.size();
        this.self = parents.self();
        this.seed = new int[individuals];
        this.pollen = new int[individuals];
        for (int who = 0; who < individuals; who++) {
            seed[who] = self[who] == who ? parents.seed(who) : NOBODY;
            pollen[who] = self[who] == who ? parents.pollen(who) : NOBODY;
        }
        this.mixtures = parents.mixtures();
        this.generation = Generations.of(individuals + mixtures.size(), new NodeLinks());
    }

    PedigreeGraph graph() {
        boolean[] parental = parental();
        int[] order = order(parental);
        int[] place = new int[generation.length];
        Arrays.fill(place, NOBODY);
        for (int at = 0; at < order.length; at++) place[order[at]] = at;
        PedigreeGraph graph = new PedigreeGraph(individuals, order.length, ancestors(parental));
        for (int at = 0; at < order.length; at++) put(graph, at, order[at], place);
        for (int who = 0; who < individuals; who++) graph.nodeOf[who] = place[self[who]];
        return graph;
    }

    private void put(PedigreeGraph graph, int at, int node, int[] place) {
        graph.generation[at] = generation[node];
        if (node >= individuals) {
            graph.putMixture(at, moved(mixtures.get(node - individuals), place));
            return;
        }
        graph.individualOf[at] = node;
        graph.seed[at] = seed[node] == NOBODY ? NOBODY : place[seed[node]];
        graph.pollen[at] = pollen[node] == NOBODY ? NOBODY : place[pollen[node]];
        graph.seedGenomes[at] = draft.seedGenomes(node);
        graph.pollenGenomes[at] = draft.pollenGenomes(node);
    }

    private static Mixture moved(Mixture mixture, int[] place) {
        int[] members = Arrays.stream(mixture.members()).map(who -> place[who]).toArray();
        return new Mixture(members, mixture.probabilities(), mixture.kind());
    }

    private boolean[] parental() {
        boolean[] parental = new boolean[generation.length];
        for (int who = 0; who < individuals; who++) {
            if (seed[who] != NOBODY) parental[seed[who]] = true;
            if (pollen[who] != NOBODY) parental[pollen[who]] = true;
        }
        for (Mixture mixture : mixtures) for (int member : mixture.members()) parental[member] = true;
        return parental;
    }

    private static int ancestors(boolean[] parental) {
        int ancestors = 0;
        for (boolean has : parental) if (has) ancestors++;
        return ancestors;
    }

    /** A counting sort by generation, those without offspring after all others. */
    private int[] order(boolean[] parental) {
        int generations = Arrays.stream(generation).max().orElse(0) + 1;
        int[] start = new int[2 * generations + 1];
        int nodes = 0;
        for (int node = 0; node < generation.length; node++) {
            if (!isNode(node)) continue;
            start[slot(node, parental, generations) + 1]++;
            nodes++;
        }
        for (int slot = 1; slot < start.length; slot++) start[slot] += start[slot - 1];
        int[] order = new int[nodes];
        for (int node = 0; node < generation.length; node++) {
            if (isNode(node)) order[start[slot(node, parental, generations)]++] = node;
        }
        return order;
    }

    private boolean isNode(int node) {
        return node >= individuals || self[node] == node;
    }

    private int slot(int node, boolean[] parental, int generations) {
        return generation[node] + (parental[node] ? 0 : generations);
    }

    private final class NodeLinks implements Links {
        @Override
        public int count(int node) {
            return node < individuals ? 2 : mixtures.get(node - individuals).members().length;
        }

        @Override
        public int from(int node, int link) {
            if (node >= individuals) return mixtures.get(node - individuals).members()[link];
            return link == 0 ? seed[node] : pollen[node];
        }
    }
}
