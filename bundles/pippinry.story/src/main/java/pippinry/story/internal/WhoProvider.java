package pippinry.story.internal;

import java.util.EnumSet;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import pippinry.model.ask.TaskSource;
import pippinry.panels.Panel;
import pippinry.panels.PanelContext;
import pippinry.panels.PanelProvider;
import pippinry.story.internal.number.DueWork;
import pippinry.story.internal.view.WhoPanel;

/** Offers the Who panel. */
@Component
public final class WhoProvider implements PanelProvider {

    private static final Placement PLACEMENT = new Placement("who", "Who", EnumSet.allOf(Desk.class), Spot.BESIDE, 50);

    private final DueWork work;

    @Activate
    public WhoProvider(
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<TaskSource> sources) {
        this.work = new DueWork(sources);
    }

    @Override
    public Placement placement() {
        return PLACEMENT;
    }

    @Override
    public Panel open(PanelContext context) {
        return new WhoPanel(context, work);
    }
}
