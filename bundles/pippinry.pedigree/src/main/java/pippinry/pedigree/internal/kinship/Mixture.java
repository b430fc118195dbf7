package pippinry.pedigree.internal.kinship;

import java.util.Arrays;

/**
 * A parent of whom only a group is known: each member is the parent with its probability.
 *
 * @param members the possible parents, each once
 * @param probabilities of the members, in their order; they sum to 1
 * @param kind how the group came about
 */
record Mixture(int[] members, double[] probabilities, Kind kind) {
    /** How a group of possible parents came about. */
    enum Kind {
        /** They were named. */
        CANDIDATES,
        /** Everybody who may have given open pollen: a wide group. */
        POOL,
        /** A pool less one of its members, who has a negative probability to cancel its part in the pool. */
        POOL_LESS_SEED_PARENT
    }

    static Mixture pool(int[] members) {
        double[] even = new double[members.length];
        Arrays.fill(even, 1.0 / members.length);
        return new Mixture(members, even, Kind.POOL);
    }

    /** A pool of so many members without one of them, since a tree hardly takes its own pollen. */
    static Mixture without(int member, int pool, int size) {
        double others = size - 1;
        return new Mixture(
                new int[] {member, pool}, new double[] {-1 / others, size / others}, Kind.POOL_LESS_SEED_PARENT);
    }

    boolean open() {
        return kind != Kind.CANDIDATES;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Mixture that
                && kind == that.kind
                && Arrays.equals(members, that.members)
                && Arrays.equals(probabilities, that.probabilities);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(members) * 31 + Arrays.hashCode(probabilities);
    }

    @Override
    public String toString() {
        return "one of " + Arrays.toString(members) + " at " + Arrays.toString(probabilities);
    }
}
