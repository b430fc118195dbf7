package pippinry.pedigree.internal.kinship;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** Turns what a draft says of parents into node numbers: individuals keep theirs, groups of possible parents are numbered after them. */
final class PossibleParents {
    static final int NOBODY = -1;

    private final PedigreeDraft draft;
    private final Links links;
    private final int[] generation;
    private final int[] self;
    private final Map<Integer, Integer> poolUntil = new HashMap<>();
    private final Map<Mixture, Integer> nodes = new HashMap<>();
    private final List<Mixture> mixtures = new ArrayList<>();
    private int[] pollenGroup;

    PossibleParents(PedigreeDraft draft) {
        this.draft = draft;
        this.links = new DraftLinks(draft);
        this.generation = Generations.of(draft.size() + 1, links);
        this.self = IntStream.range(0, draft.size()).map(this::originOf).toArray();
    }

    private int originOf(int who) {
        int origin = who;
        while (draft.originOf(origin) >= 0) origin = draft.originOf(origin);
        return origin;
    }

    /** The individual whose genotype this one shares: itself, or the origin of a sport. */
    int[] self() {
        return self;
    }

    List<Mixture> mixtures() {
        return mixtures;
    }

    int seed(int child) {
        return node(child, draft.seedOf(child));
    }

    int pollen(int child) {
        return node(child, draft.pollenOf(child));
    }

    private int node(int child, int parent) {
        if (parent == PedigreeDraft.OPEN) return openPollen(child);
        if (parent >= 0) return self[parent];
        Mixture candidates = draft.candidatesOf(parent);
        return candidates == null ? NOBODY : node(sportsJoined(candidates));
    }

    private int node(Mixture mixture) {
        if (mixture.members().length == 1) return mixture.members()[0];
        return nodes.computeIfAbsent(mixture, fresh -> {
            mixtures.add(fresh);
            return draft.size() + mixtures.size() - 1;
        });
    }

    private Mixture sportsJoined(Mixture candidates) {
        Map<Integer, Double> chances = new TreeMap<>();
        for (int i = 0; i < candidates.members().length; i++) {
            chances.merge(self[candidates.members()[i]], candidates.probabilities()[i], Double::sum);
        }
        int[] members = chances.keySet().stream().mapToInt(Integer::intValue).toArray();
        double[] probabilities =
                chances.values().stream().mapToDouble(Double::doubleValue).toArray();
        return new Mixture(members, probabilities, Mixture.Kind.CANDIDATES);
    }

    private int pool(int latestGeneration) {
        int[] members = Arrays.stream(pollenGroup())
                .filter(who -> generation[who] <= latestGeneration)
                .toArray();
        return members.length == 0 ? NOBODY : node(Mixture.pool(members));
    }

    private int openPollen(int child) {
        int pool = poolUntil.computeIfAbsent(generation[child] - 1, this::pool);
        int seedParent = draft.seedOf(child) < 0 ? NOBODY : self[draft.seedOf(child)];
        if (pool == seedParent) return NOBODY;
        if (pool < draft.size()) return pool;
        int[] members = mixtures.get(pool - draft.size()).members();
        if (Arrays.binarySearch(members, seedParent) < 0) return pool;
        return node(Mixture.without(seedParent, pool, members.length));
    }

    private int[] pollenGroup() {
        if (pollenGroup == null) {
            int[] told = draft.pollenGroup();
            IntStream group = told == null ? namedAsParents() : Arrays.stream(told);
            pollenGroup = group.map(who -> self[who]).sorted().distinct().toArray();
        }
        return pollenGroup;
    }

    private IntStream namedAsParents() {
        boolean[] named = new boolean[draft.size() + 1];
        for (int who = 0; who < draft.size(); who++) {
            if (self[who] == who) markParents(who, named);
        }
        return IntStream.range(0, draft.size()).filter(who -> named[who]);
    }

    private void markParents(int who, boolean[] named) {
        for (int link = 0; link < links.count(who); link++) {
            int parent = links.from(who, link);
            if (parent >= 0) named[parent] = true;
        }
    }
}
