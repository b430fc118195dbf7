package pippinry.lineage.internal;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import pippinry.lineage.internal.view.LineagePanel;
import pippinry.model.ask.Descent;
import pippinry.model.ask.Relationship;
import pippinry.panels.Panel;
import pippinry.panels.PanelContext;
import pippinry.panels.PanelProvider;

/** Offers the Lineage panel. */
@Component
public final class LineageProvider implements PanelProvider {

    private static final int ORDER = 20;

    private final Optional<Relationship> relationship;
    private final Optional<Descent> descent;

    @Activate
    public LineageProvider(
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    Relationship relationship,
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    Descent descent) {
        this.relationship = Optional.ofNullable(relationship);
        this.descent = Optional.ofNullable(descent);
    }

    @Override
    public String id() {
        return "lineage";
    }

    @Override
    public String title() {
        return "Lineage";
    }

    @Override
    public Set<Desk> desks() {
        return EnumSet.of(Desk.WINTER);
    }

    @Override
    public Spot spot() {
        return Spot.MAIN;
    }

    @Override
    public int order() {
        return ORDER;
    }

    @Override
    public Panel open(PanelContext context) {
        return new LineagePanel(context, relationship, descent);
    }
}
