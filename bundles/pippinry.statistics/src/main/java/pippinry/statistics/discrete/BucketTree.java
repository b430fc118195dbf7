package pippinry.statistics.discrete;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Messages up and down the tree of buckets that an order of elimination makes. */
final class BucketTree {

    private final int[] sizes;
    private final int[] order;
    private final int[] place;
    private final List<List<Factor>> own = new ArrayList<>();
    private final List<List<Integer>> children = new ArrayList<>();
    private final Factor[] up;
    private final Factor[] down;
    private final int[] parent;

    BucketTree(int[] sizes, List<Factor> factors, int[] order) {
        this.sizes = sizes;
        this.order = order;
        this.place = new int[order.length];
        this.up = new Factor[order.length];
        this.down = new Factor[order.length];
        this.parent = new int[order.length];
        for (int i = 0; i < order.length; i++) {
            place[order[i]] = i;
            own.add(new ArrayList<>());
            children.add(new ArrayList<>());
        }
        factors.stream().filter(factor -> factor.unknowns().length > 0).forEach(factor -> own.get(first(factor))
                .add(factor));
    }

    List<double[]> marginals() {
        for (int bucket = 0; bucket < order.length; bucket++) {
            sendUp(bucket);
        }
        List<double[]> marginals = new ArrayList<>();
        for (int i = 0; i < order.length; i++) {
            marginals.add(null);
        }
        for (int bucket = order.length - 1; bucket >= 0; bucket--) {
            receiveDown(bucket);
            marginals.set(
                    order[bucket],
                    all(bucket, -1).times(everyState(order[bucket])).of(order[bucket]));
        }
        return marginals;
    }

    private void sendUp(int bucket) {
        Factor message = all(bucket, -1).times(everyState(order[bucket])).without(order[bucket]);
        up[bucket] = message;
        parent[bucket] = message.unknowns().length == 0 ? -1 : first(message);
        if (parent[bucket] >= 0) {
            children.get(parent[bucket]).add(bucket);
        }
    }

    /** What the rest of the tree says to a bucket: its parent's tables but for the bucket's own message. */
    private void receiveDown(int bucket) {
        if (parent[bucket] < 0) {
            down[bucket] = Factor.one();
            return;
        }
        Factor message = all(parent[bucket], bucket);
        for (int unknown : message.unknowns()) {
            message = up[bucket].about(unknown) ? message : message.without(unknown);
        }
        down[bucket] = message.scaled();
    }

    /** Everything said to a bucket, but for one child; from above too once that is known. */
    private Factor all(int bucket, int butChild) {
        Factor product = down[bucket] == null ? Factor.one() : down[bucket];
        for (Factor factor : own.get(bucket)) {
            product = product.times(factor);
        }
        for (int child : children.get(bucket)) {
            product = child == butChild ? product : product.times(up[child]).scaled();
        }
        return product;
    }

    private Factor everyState(int unknown) {
        double[] ones = new double[sizes[unknown]];
        Arrays.fill(ones, 1);
        return new Factor(new int[] {unknown}, new int[] {sizes[unknown]}, ones);
    }

    private int first(Factor factor) {
        int first = Integer.MAX_VALUE;
        for (int unknown : factor.unknowns()) {
            first = Math.min(first, place[unknown]);
        }
        return first;
    }
}
