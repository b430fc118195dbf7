package pippinry.pedigree.internal.kinship;

import java.util.Arrays;

/**
 * The longest path from each individual back to a founder. Who has no known parent is of generation 0; everybody else is
 * one more than the latest of the parents. One depth-first pass: cost is the number of links.
 */
final class Generations {
    private static final int UNSEEN = -1;
    private static final int OPEN = -2;

    private final Links links;
    private final int[] generation;
    private final int[] path;
    private final int[] nextLink;

    private Generations(int count, Links links) {
        this.links = links;
        this.generation = new int[count];
        this.path = new int[count];
        this.nextLink = new int[count];
        Arrays.fill(generation, UNSEEN);
    }

    /** Generation by individual; a {@link PedigreeLoop} if somebody is their own ancestor. */
    static int[] of(int count, Links links) {
        Generations generations = new Generations(count, links);
        for (int who = 0; who < count; who++) {
            if (generations.generation[who] == UNSEEN) generations.climb(who);
        }
        return generations.generation;
    }

    private void climb(int start) {
        int depth = 0;
        path[0] = start;
        generation[start] = OPEN;
        while (depth >= 0) {
            int who = path[depth];
            if (nextLink[who] == links.count(who)) {
                generation[who] = afterTheLatestParent(who);
                depth--;
                continue;
            }
            int parent = links.from(who, nextLink[who]++);
            if (parent < 0 || generation[parent] >= 0) continue;
            if (generation[parent] == OPEN) throw new PedigreeLoop(loop(parent, depth));
            generation[parent] = OPEN;
            path[++depth] = parent;
        }
    }

    private int afterTheLatestParent(int who) {
        int latest = -1;
        for (int link = 0; link < links.count(who); link++) {
            int parent = links.from(who, link);
            if (parent >= 0) latest = Math.max(latest, generation[parent]);
        }
        return latest + 1;
    }

    private int[] loop(int again, int depth) {
        int from = depth;
        while (path[from] != again) from--;
        return Arrays.copyOfRange(path, from, depth + 1);
    }
}
