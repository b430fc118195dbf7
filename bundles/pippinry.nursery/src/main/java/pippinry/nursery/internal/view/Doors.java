package pippinry.nursery.internal.view;

import pippinry.panels.Panel;
import pippinry.panels.PanelContext;

/** The forms behind the doors of this module. */
public final class Doors {

    private Doors() {}

    public static Panel seedlings(PanelContext context, Runnable back) {
        return new SeedlingsForm(context, back);
    }

    public static Panel seed(PanelContext context, Runnable back) {
        return new SeedForm(context, back);
    }
}
