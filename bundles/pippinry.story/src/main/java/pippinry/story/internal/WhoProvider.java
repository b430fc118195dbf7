package pippinry.story.internal;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
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

    private static final int ORDER = 50;

    private final DueWork work;

    @Activate
    public WhoProvider(
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<TaskSource> sources) {
        this.work = new DueWork(sources);
    }

    @Override
    public String id() {
        return "who";
    }

    @Override
    public String title() {
        return "Who";
    }

    @Override
    public Set<Desk> desks() {
        return EnumSet.allOf(Desk.class);
    }

    @Override
    public Spot spot() {
        return Spot.BESIDE;
    }

    @Override
    public int order() {
        return ORDER;
    }

    @Override
    public Panel open(PanelContext context) {
        return new WhoPanel(context, work);
    }
}
