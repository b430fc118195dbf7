package pippinry.lineage.internal;

import java.util.EnumSet;
import java.util.Optional;
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

    private static final Placement PLACEMENT =
            new Placement("lineage", "Lineage", EnumSet.of(Desk.WINTER), Spot.MAIN, 20);

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
    public Placement placement() {
        return PLACEMENT;
    }

    @Override
    public Panel open(PanelContext context) {
        return new LineagePanel(context, relationship, descent);
    }
}
