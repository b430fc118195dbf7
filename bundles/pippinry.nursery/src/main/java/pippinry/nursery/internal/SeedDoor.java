package pippinry.nursery.internal;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import pippinry.nursery.internal.view.Doors;
import pippinry.panels.Door;
import pippinry.panels.Panel;
import pippinry.panels.PanelContext;

/** The way in for somebody who has seed. */
@Component
public final class SeedDoor implements Door {

    private static final int ORDER = 2;

    @Activate
    public SeedDoor() {}

    @Override
    public int order() {
        return ORDER;
    }

    @Override
    public String title() {
        return "I have seed";
    }

    @Override
    public String words() {
        return "Asks where it came from, how many and how it is kept. You get a number for the bag, and the days on which it"
                + " goes into the cold and is sown.";
    }

    @Override
    public String later() {
        return "Add seed that is there";
    }

    @Override
    public Panel open(PanelContext context, Runnable back) {
        return Doors.seed(context, back);
    }
}
