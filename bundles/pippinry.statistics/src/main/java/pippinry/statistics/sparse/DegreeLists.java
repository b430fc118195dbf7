package pippinry.statistics.sparse;

import java.util.Arrays;

/** Variables by their degree, so that one of the least is found at once. */
final class DegreeLists {
    private static final int NONE = -1;

    private final int[] first;
    private final int[] next;
    private final int[] before;
    private int least;

    DegreeLists(int size) {
        this.first = new int[size + 1];
        this.next = new int[size];
        this.before = new int[size];
        Arrays.fill(first, NONE);
    }

    void add(int variable, int degree) {
        int after = first[degree];
        next[variable] = after;
        before[variable] = NONE;
        if (after != NONE) before[after] = variable;
        first[degree] = variable;
        if (degree < least) least = degree;
    }

    void remove(int variable, int degree) {
        if (before[variable] == NONE) first[degree] = next[variable];
        else next[before[variable]] = next[variable];
        if (next[variable] != NONE) before[next[variable]] = before[variable];
    }

    int takeLeast() {
        while (first[least] == NONE) least++;
        int variable = first[least];
        remove(variable, least);
        return variable;
    }
}
