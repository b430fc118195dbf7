package pippinry.labels.internal;

import java.util.EnumSet;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import pippinry.labels.internal.view.EnterPanel;
import pippinry.panels.Panel;
import pippinry.panels.PanelContext;
import pippinry.panels.PanelProvider;
import pippinry.traits.CropPack;

/** Offers the panel in which sheets are typed in. */
@Component
public final class EnterProvider implements PanelProvider {

    private static final Placement PLACEMENT =
            new Placement("enter", "Enter a sheet", EnumSet.of(Desk.BLOOM, Desk.ROW), Spot.BESIDE, 65);

    private final List<CropPack> packs;

    @Activate
    public EnterProvider(
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<CropPack> packs) {
        this.packs = List.copyOf(packs);
    }

    @Override
    public Placement placement() {
        return PLACEMENT;
    }

    @Override
    public Panel open(PanelContext context) {
        return new EnterPanel(context, packs);
    }
}
