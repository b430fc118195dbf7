package pippinry.statistics.sparse;

import java.util.ArrayList;
import java.util.List;
import java.util.PriorityQueue;
import java.util.stream.IntStream;

/** Shares the blocks out: subtrees of about the same work that do not touch each other, and the blocks above them all. */
final class Subtrees {
    private static final int PARTS = 32;
    private static final int ROOT = EliminationTree.ROOT;

    private final int[] start;
    private final List<Integer> below;
    private final int[] top;

    private Subtrees(int[] start, List<Integer> below, int[] top) {
        this.start = start;
        this.below = below;
        this.top = top;
    }

    static Subtrees of(EliminationPlan plan) {
        int blocks = plan.blocks.count();
        double[] work = new double[blocks];
        int[] start = new int[blocks];
        double all = 0;
        for (int block = 0; block < blocks; block++) {
            double height = plan.height(block);
            double own = plan.blocks.width(block) * height * height;
            all += own;
            work[block] += own;
            start[block] = plan.firstChild[block] == ROOT ? block : start[plan.firstChild[block]];
            if (plan.parent[block] != ROOT) work[plan.parent[block]] += work[block];
        }
        return split(plan, work, start, all / PARTS);
    }

    private static Subtrees split(EliminationPlan plan, double[] work, int[] start, double enough) {
        PriorityQueue<Integer> heaviest = new PriorityQueue<>((a, b) -> Double.compare(work[b], work[a]));
        IntStream.range(0, plan.blocks.count())
                .filter(block -> plan.parent[block] == ROOT)
                .forEach(heaviest::add);
        List<Integer> below = new ArrayList<>();
        List<Integer> top = new ArrayList<>();
        while (!heaviest.isEmpty()) {
            int block = heaviest.remove();
            if (work[block] <= enough) {
                below.add(block);
                continue;
            }
            top.add(block);
            for (int child = plan.firstChild[block]; child != ROOT; child = plan.sibling[child]) heaviest.add(child);
        }
        int[] inOrder = top.stream().mapToInt(Integer::intValue).sorted().toArray();
        return new Subtrees(start, below, inOrder);
    }

    /** The roots of the subtrees, the one with the most work first. */
    java.util.stream.Stream<Integer> below() {
        return below.stream();
    }

    /** The first block of a subtree; it goes on without a gap to its root. */
    int start(int root) {
        return start[root];
    }

    /** The blocks above all subtrees, children before parents. */
    int[] top() {
        return top;
    }
}
