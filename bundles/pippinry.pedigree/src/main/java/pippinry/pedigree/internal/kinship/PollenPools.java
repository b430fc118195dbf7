package pippinry.pedigree.internal.kinship;

import java.util.ArrayList;
import java.util.List;

/**
 * The relationship of everybody to each pool of open pollen parents. A pool may have thousands of members, so it is not
 * walked through again and again: its column of the relationship matrix is reckoned once, by the indirect method of J.-J.
 * Colleau (2002) An indirect approach to the extensive calculation of relationship coefficients, Genetics Selection
 * Evolution 34:409-421, at the cost of the number of nodes, and looked up after that.
 */
final class PollenPools {
    private final PedigreeGraph graph;
    private final List<Integer> nodes = new ArrayList<>();
    private final List<double[]> columns = new ArrayList<>();

    PollenPools(PedigreeGraph graph) {
        this.graph = graph;
    }

    /** Reckons a pool when what all its ancestors bring of their own is known; its relationship to itself. */
    double add(int pool, double[] own) {
        double[] column = new double[graph.nodes()];
        column[pool] = 1;
        for (int node = pool; node >= 0; node--) {
            if (column[node] == 0) continue;
            graph.passToParents(node, column[node], column);
            column[node] *= own[node];
        }
        for (int node = 0; node < column.length; node++) column[node] += graph.meanOfParents(node, column);
        nodes.add(pool);
        columns.add(column);
        return column[pool];
    }

    boolean isEmpty() {
        return nodes.isEmpty();
    }

    /** What the walks from x and from y left out because it lies behind a pool. */
    double behind(int x, AncestorWalk fromX, int y, AncestorWalk fromY) {
        double sum = 0;
        for (int p = 0; p < nodes.size(); p++) {
            double xByPool = fromX.share(nodes.get(p));
            double yByPool = fromY.share(nodes.get(p));
            if (yByPool != 0) sum += yByPool * columns.get(p)[x];
            if (xByPool != 0) sum += xByPool * (columns.get(p)[y] - byOtherPools(p, fromY));
        }
        return sum;
    }

    private double byOtherPools(int pool, AncestorWalk fromY) {
        double sum = 0;
        for (int q = 0; q < nodes.size(); q++) {
            double yByPool = fromY.share(nodes.get(q));
            if (yByPool != 0) sum += yByPool * columns.get(pool)[nodes.get(q)];
        }
        return sum;
    }
}
