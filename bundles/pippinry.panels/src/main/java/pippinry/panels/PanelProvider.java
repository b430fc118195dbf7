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

    /** Where a panel stands on a desk unless the person moved it; several in one spot share it as tabs. */
    enum Spot {
        MAIN,
        BESIDE,
        BELOW
    }

    /**
     * What a panel is called and where it stands unless the person moved it.
     *
     * @param id never changes, never shown: it names the panel in a saved desk
     * @param title as the person reads it, such as {@code Crosses}
     * @param order panels of a desk are offered in this order
     */
    record Placement(String id, String title, Set<Desk> desks, Spot spot, int order) {

        public Placement {
            desks = Set.copyOf(desks);
        }
    }

    Placement placement();

    /** Called on the event dispatch thread. */
    Panel open(PanelContext context);

    default String id() {
        return placement().id();
    }

    default String title() {
        return placement().title();
    }

    default Set<Desk> desks() {
        return placement().desks();
    }

    default Spot spot() {
        return placement().spot();
    }

    default int order() {
        return placement().order();
    }
}
