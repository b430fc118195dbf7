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

    private static final int ORDER = 90;

    @Activate
    public HistoryProvider() {}

    @Override
    public String id() {
        return "history";
    }

    @Override
    public String title() {
        return "History";
    }

    @Override
    public Set<Desk> desks() {
        return Set.of(Desk.WINTER);
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
        return new HistoryPanel(context);
    }
}
