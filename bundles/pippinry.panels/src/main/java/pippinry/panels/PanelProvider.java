package pippinry.panels;

import java.util.Set;
import org.osgi.annotation.versioning.ConsumerType;

/** Offers a panel, as a service. A bundle that stops takes its panels with it. */
@ConsumerType
public interface PanelProvider {

    /** The saved arrangements of panels, by the season's work. */
    enum Desk {
        WINTER,
        BLOOM,
        ROW,
        FRUIT
    }

    /** Never changes, never shown: it names the panel in a saved desk. */
    String id();

    /** As the person reads it, such as {@code Crosses}. */
    String title();

    /** Where the panel stands unless the person moved it. */
    Set<Desk> desks();

    /** Where a panel stands on a desk unless the person moved it; several in one spot share it as tabs. */
    enum Spot {
        MAIN,
        BESIDE,
        BELOW
    }

    Spot spot();

    /** Panels of a desk are offered in this order. */
    int order();

    /** Called on the event dispatch thread. */
    Panel open(PanelContext context);
}
