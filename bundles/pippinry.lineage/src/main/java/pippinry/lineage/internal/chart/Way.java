package pippinry.lineage.internal.chart;

import java.util.List;

/**
 * The way of a line: it starts at the first point, then each three points are two of control and one reached (a chain of
 * cubic curves).
 */
public record Way(Link link, List<double[]> points) {

    public Way {
        points = List.copyOf(points);
    }
}
