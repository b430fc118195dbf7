package pippinry.pedigree.internal.kinship;

/** The relationship of two nodes (twice their coancestry), from their common ancestors. Asking for many mates of the same x in turn is cheapest. Not for several threads. */
final class PairRelationship {
    private final AncestorWalk fromX;
    private final AncestorWalk fromY;
    private final double[] own;
    private final double[] self;
    private final PollenPools pools;
    private int walkedX = -1;

    PairRelationship(PedigreeGraph graph, double[] own, double[] self, PollenPools pools) {
        this.fromX = new AncestorWalk(graph);
        this.fromY = new AncestorWalk(graph);
        this.own = own;
        this.self = self;
        this.pools = pools;
    }

    double between(int x, int y) {
        if (x == y) return self[x];
        walk(x);
        fromY.from(y);
        double common = fromY.common(fromX, own);
        return pools.isEmpty() ? common : common + pools.behind(x, fromX, y, fromY);
    }

    /** The relationship of a node to itself, from its ancestors alone: for a group of possible parents. */
    double ofMembers(int group) {
        walk(group);
        double common = fromX.common(fromX, own);
        return pools.isEmpty() ? common : common + pools.behind(group, fromX, group, fromX);
    }

    private void walk(int x) {
        if (walkedX == x) return;
        fromX.from(x);
        walkedX = x;
    }
}
