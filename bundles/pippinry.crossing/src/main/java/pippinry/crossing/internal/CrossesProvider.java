package pippinry.crossing.internal;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import pippinry.crossing.internal.view.CrossesPanel;
import pippinry.model.ask.HouseRates;
import pippinry.model.ask.Relationship;
import pippinry.panels.Panel;
import pippinry.panels.PanelContext;
import pippinry.panels.PanelProvider;
import pippinry.traits.CropPack;

/** Offers the Crosses panel. */
@Component
public final class CrossesProvider implements PanelProvider {

    private static final Placement PLACEMENT =
            new Placement("crosses", "Crosses", EnumSet.of(Desk.WINTER), Spot.MAIN, 10);

    private final Packs packs;
    private final Optional<Relationship> relationship;
    private final HouseRates rates;

    @Activate
    public CrossesProvider(
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<CropPack> packs,
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    Relationship relationship,
            @Reference HouseRates rates) {
        this.packs = new Packs(packs);
        this.relationship = Optional.ofNullable(relationship);
        this.rates = rates;
    }

    @Override
    public Placement placement() {
        return PLACEMENT;
    }

    @Override
    public Panel open(PanelContext context) {
        return new CrossesPanel(context, packs, relationship, rates);
    }
}
