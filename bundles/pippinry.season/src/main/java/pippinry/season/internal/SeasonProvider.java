package pippinry.season.internal;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import pippinry.model.ask.TaskSource;
import pippinry.panels.Door;
import pippinry.panels.Panel;
import pippinry.panels.PanelContext;
import pippinry.panels.PanelProvider;
import pippinry.season.internal.view.SeasonPanel;

/** Offers the Season panel. */
@Component
public final class SeasonProvider implements PanelProvider {

    private static final Placement PLACEMENT =
            new Placement("season", "Season", EnumSet.allOf(Desk.class), Spot.MAIN, 0);

    private final List<TaskSource> sources;
    private final List<Door> doors;

    @Activate
    public SeasonProvider(
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<TaskSource> sources,
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<Door> doors) {
        this.sources = sources;
        this.doors = doors.stream().sorted(Comparator.comparingInt(Door::order)).toList();
    }

    @Override
    public Placement placement() {
        return PLACEMENT;
    }

    @Override
    public Panel open(PanelContext context) {
        return new SeasonPanel(context, sources, doors);
    }
}
