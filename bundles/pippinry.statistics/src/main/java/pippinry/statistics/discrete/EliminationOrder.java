package pippinry.statistics.discrete;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Set;

/** An order of elimination in which the unknown with the fewest neighbours left goes next, and how large a table it makes. */
final class EliminationOrder {

    private record Waiting(int neighbours, int unknown) {}

    private final int[] sizes;
    private final List<Set<Integer>> neighbours = new ArrayList<>();
    private final int[] order;
    private double largest = 1;

    EliminationOrder(int[] sizes, List<Factor> factors) {
        this.sizes = sizes;
        for (int i = 0; i < sizes.length; i++) {
            neighbours.add(new HashSet<>());
        }
        factors.forEach(this::join);
        order = eliminate();
    }

    int[] order() {
        return order;
    }

    /** Weights in the largest table on the way. */
    double largestTable() {
        return largest;
    }

    private void join(Factor factor) {
        for (int one : factor.unknowns()) {
            for (int other : factor.unknowns()) {
                if (one != other) {
                    neighbours.get(one).add(other);
                }
            }
        }
    }

    private int[] eliminate() {
        PriorityQueue<Waiting> queue =
                new PriorityQueue<>(Comparator.comparingInt(Waiting::neighbours).thenComparingInt(Waiting::unknown));
        for (int i = 0; i < sizes.length; i++) {
            queue.add(new Waiting(neighbours.get(i).size(), i));
        }
        boolean[] gone = new boolean[sizes.length];
        int[] result = new int[sizes.length];
        int n = 0;
        while (n < result.length) {
            Waiting next = queue.remove();
            boolean stale =
                    gone[next.unknown()] || neighbours.get(next.unknown()).size() != next.neighbours();
            if (!stale) {
                gone[next.unknown()] = true;
                result[n++] = next.unknown();
                take(next.unknown(), queue);
            }
        }
        return result;
    }

    private void take(int unknown, PriorityQueue<Waiting> queue) {
        Set<Integer> around = neighbours.get(unknown);
        double table = sizes[unknown];
        for (int one : around) {
            table *= sizes[one];
            neighbours.get(one).addAll(around);
            neighbours.get(one).remove(one);
            neighbours.get(one).remove(unknown);
            queue.add(new Waiting(neighbours.get(one).size(), one));
        }
        largest = Math.max(largest, table);
    }
}
