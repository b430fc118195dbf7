package pippinry.traits.apple.internal;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import pippinry.traits.CropPack;
import pippinry.traits.TablePack;

/** The stock crop pack for apples: the tables of this bundle. */
@Component(service = CropPack.class, property = "pippinry.crop=apple")
public final class ApplePack extends TablePack {

    @Activate
    public ApplePack() {
        super("apple", ApplePack.class, "/tables");
    }
}
