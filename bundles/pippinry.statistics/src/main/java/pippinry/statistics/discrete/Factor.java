package pippinry.statistics.discrete;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * A table of weights over some unknowns.
 *
 * @param unknowns numbers of the unknowns, rising
 * @param sizes how many states each has, in the same order
 * @param weights not negative; the last unknown runs fastest
 */
public record Factor(int[] unknowns, int[] sizes, double[] weights) {

    public Factor {
        unknowns = unknowns.clone();
        sizes = sizes.clone();
        int length = Arrays.stream(sizes).reduce(1, (x, y) -> x * y);
        boolean rising = true;
        for (int i = 1; i < unknowns.length; i++) {
            rising &= unknowns[i - 1] < unknowns[i];
        }
        if (unknowns.length != sizes.length || weights.length != length || !rising) {
            throw new IllegalArgumentException("A table of " + weights.length + " weights over " + length
                    + " states of " + Arrays.toString(unknowns));
        }
    }

    /** A table that weighs nothing: 1 everywhere. */
    static Factor one() {
        return new Factor(new int[0], new int[0], new double[] {1});
    }

    boolean about(int unknown) {
        return Arrays.binarySearch(unknowns, unknown) >= 0;
    }

    /** Product, over all unknowns of both. */
    Factor times(Factor other) {
        int[] all = union(unknowns, other.unknowns);
        int[] size = new int[all.length];
        int length = 1;
        for (int i = 0; i < all.length; i++) {
            int mine = Arrays.binarySearch(unknowns, all[i]);
            size[i] = mine >= 0 ? sizes[mine] : other.sizes[Arrays.binarySearch(other.unknowns, all[i])];
            length *= size[i];
        }
        int[] step = steps(all);
        int[] otherStep = other.steps(all);
        double[] product = new double[length];
        int[] state = new int[all.length];
        int here = 0;
        int there = 0;
        for (int i = 0; i < length; i++) {
            product[i] = weights[here] * other.weights[there];
            for (int digit = all.length - 1; digit >= 0; digit--) {
                here += step[digit];
                there += otherStep[digit];
                if (++state[digit] < size[digit]) {
                    break;
                }
                here -= step[digit] * size[digit];
                there -= otherStep[digit] * size[digit];
                state[digit] = 0;
            }
        }
        return new Factor(all, size, product);
    }

    /** Summed over one unknown, and scaled so that the largest weight is 1. */
    Factor without(int unknown) {
        int at = Arrays.binarySearch(unknowns, unknown);
        int inner = 1;
        for (int i = at + 1; i < sizes.length; i++) {
            inner *= sizes[i];
        }
        double[] sums = new double[weights.length / sizes[at]];
        for (int i = 0; i < weights.length; i++) {
            sums[i / (inner * sizes[at]) * inner + i % inner] += weights[i];
        }
        return new Factor(dropped(unknowns, at), dropped(sizes, at), sums).scaled();
    }

    /** Weights of one unknown, summed over all others, scaled to probabilities; all zero if the table is. */
    double[] of(int unknown) {
        Factor rest = this;
        for (int other : unknowns) {
            rest = other == unknown ? rest : rest.without(other);
        }
        double sum = Arrays.stream(rest.weights).sum();
        return Arrays.stream(rest.weights).map(w -> sum == 0 ? 0 : w / sum).toArray();
    }

    Factor scaled() {
        double largest = Arrays.stream(weights).max().orElse(0);
        return largest == 0 || largest == 1
                ? this
                : new Factor(
                        unknowns,
                        sizes,
                        Arrays.stream(weights).map(w -> w / largest).toArray());
    }

    /** How far the weights move on when each unknown of {@code all} moves on by one state. */
    private int[] steps(int[] all) {
        int[] steps = new int[all.length];
        int step = 1;
        for (int i = unknowns.length - 1; i >= 0; i--) {
            steps[Arrays.binarySearch(all, unknowns[i])] = step;
            step *= sizes[i];
        }
        return steps;
    }

    static int[] union(int[] one, int[] other) {
        return IntStream.concat(Arrays.stream(one), Arrays.stream(other))
                .sorted()
                .distinct()
                .toArray();
    }

    private static int[] dropped(int[] values, int at) {
        int[] rest = new int[values.length - 1];
        System.arraycopy(values, 0, rest, 0, at);
        System.arraycopy(values, at + 1, rest, at, rest.length - at);
        return rest;
    }
}
