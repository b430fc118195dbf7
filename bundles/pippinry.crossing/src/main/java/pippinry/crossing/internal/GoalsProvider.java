package pippinry.crossing.internal;

import java.util.EnumSet;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import pippinry.crossing.internal.view.GoalsPanel;
import pippinry.panels.Panel;
import pippinry.panels.PanelContext;
import pippinry.panels.PanelProvider;
import pippinry.traits.CropPack;

/** Offers the Goals panel. */
@Component
public final class GoalsProvider implements PanelProvider {

    private static final Placement PLACEMENT =
            new Placement("goals", "Goals", EnumSet.of(Desk.WINTER), Spot.BESIDE, 70);

    private final Packs packs;

    @Activate
    public GoalsProvider(
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<CropPack> packs) {
        this.packs = new Packs(packs);
    }

    @Override
    public Placement placement() {
        return PLACEMENT;
    }

    @Override
    public Panel open(PanelContext context) {
        return new GoalsPanel(context, packs);
    }
}
