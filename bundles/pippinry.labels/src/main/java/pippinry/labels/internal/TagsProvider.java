package pippinry.labels.internal;

import java.util.EnumSet;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import pippinry.labels.internal.view.TagsPanel;
import pippinry.model.ask.HouseRates;
import pippinry.panels.Panel;
import pippinry.panels.PanelContext;
import pippinry.panels.PanelProvider;

/** Offers the Tags panel. */
@Component
public final class TagsProvider implements PanelProvider {

    private static final Placement PLACEMENT =
            new Placement("tags", "Tags", EnumSet.of(Desk.WINTER, Desk.BLOOM), Spot.BESIDE, 60);

    private final Optional<HouseRates> rates;

    @Activate
    public TagsProvider(
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    HouseRates rates) {
        this.rates = Optional.ofNullable(rates);
    }

    @Override
    public Placement placement() {
        return PLACEMENT;
    }

    @Override
    public Panel open(PanelContext context) {
        return new TagsPanel(context, rates);
    }
}
