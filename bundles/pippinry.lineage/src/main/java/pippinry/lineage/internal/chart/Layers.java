package pippinry.lineage.internal.chart;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.elk.alg.layered.options.LayeredMetaDataProvider;
import org.eclipse.elk.alg.layered.options.LayeredOptions;
import org.eclipse.elk.core.RecursiveGraphLayoutEngine;
import org.eclipse.elk.core.data.LayoutMetaDataService;
import org.eclipse.elk.core.math.KVector;
import org.eclipse.elk.core.options.CoreOptions;
import org.eclipse.elk.core.options.Direction;
import org.eclipse.elk.core.options.EdgeRouting;
import org.eclipse.elk.core.util.BasicProgressMonitor;
import org.eclipse.elk.core.util.ElkUtil;
import org.eclipse.elk.graph.ElkEdge;
import org.eclipse.elk.graph.ElkNode;
import org.eclipse.elk.graph.util.ElkGraphUtil;

/**
 * Gives each card its place, in layers with parents to the left of their children, by a library: the method of K. Sugiyama,
 * S. Tagawa and M. Toda (1981) Methods for visual understanding of hierarchical system structures, IEEE Transactions on
 * Systems, Man, and Cybernetics 11:109-125. Costs about two seconds for a thousand cards: not for the event thread.
 */
public final class Layers {

    public static final double CARD_WIDTH = 156;
    public static final double CARD_HEIGHT = 44;

    private static final double BESIDE = 14;
    private static final double BETWEEN = 46;

    static {
        // The library looks for its parts by a class loader that sees nothing here: they are told of by hand.
        LayoutMetaDataService.getInstance()
                .registerLayoutMetaDataProviders(new CoreOptions(), new LayeredMetaDataProvider());
    }

    private final ElkNode root = ElkGraphUtil.createGraph();
    private final Map<String, ElkNode> nodes = new LinkedHashMap<>();
    private final Map<ElkEdge, Link> edges = new LinkedHashMap<>();

    private Layers(Chart chart) {
        root.setProperty(CoreOptions.ALGORITHM, "org.eclipse.elk.layered");
        root.setProperty(CoreOptions.DIRECTION, Direction.RIGHT);
        root.setProperty(CoreOptions.EDGE_ROUTING, EdgeRouting.SPLINES);
        root.setProperty(CoreOptions.SPACING_NODE_NODE, BESIDE);
        root.setProperty(LayeredOptions.SPACING_NODE_NODE_BETWEEN_LAYERS, BETWEEN);
        chart.cards().forEach(this::add);
        chart.links().forEach(this::add);
    }

    public static LaidOut of(Chart chart) {
        if (chart.cards().isEmpty()) {
            return LaidOut.empty();
        }
        Layers layers = new Layers(chart);
        new RecursiveGraphLayoutEngine().layout(layers.root, new BasicProgressMonitor());
        return layers.read(chart);
    }

    private void add(Card card) {
        ElkNode node = ElkGraphUtil.createNode(root);
        node.setDimensions(CARD_WIDTH, CARD_HEIGHT);
        nodes.put(card.id(), node);
    }

    private void add(Link link) {
        edges.put(ElkGraphUtil.createSimpleEdge(nodes.get(link.parent()), nodes.get(link.child())), link);
    }

    private LaidOut read(Chart chart) {
        Map<String, Place> places = new HashMap<>();
        nodes.forEach(
                (id, node) -> places.put(id, new Place(node.getX(), node.getY(), node.getWidth(), node.getHeight())));
        List<Way> ways = new ArrayList<>();
        edges.forEach((edge, link) -> ways.add(new Way(link, points(edge))));
        return new LaidOut(chart, places, ways, root.getWidth(), root.getHeight());
    }

    private static List<double[]> points(ElkEdge edge) {
        List<double[]> points = new ArrayList<>();
        for (KVector point : ElkUtil.createVectorChain(edge.getSections().get(0))) {
            points.add(new double[] {point.x, point.y});
        }
        return points;
    }
}
