package pippinry.workbench.internal;

import java.util.Set;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import pippinry.panels.Panel;
import pippinry.panels.PanelContext;
import pippinry.panels.PanelProvider;
import pippinry.workbench.internal.view.HistoryPanel;

/** Offers the History panel. */
@Component
public final class HistoryProvider implements PanelProvider {

    private static final Placement PLACEMENT =
            new Placement("history", "History", Set.of(Desk.WINTER), Spot.BESIDE, 90);

    @Activate
    public HistoryProvider() {}

    @Override
    public Placement placement() {
        return PLACEMENT;
    }

    @Override
    public Panel open(PanelContext context) {
        return new HistoryPanel(context);
    }
}
