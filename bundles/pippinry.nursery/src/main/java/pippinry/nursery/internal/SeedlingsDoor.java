package pippinry.nursery.internal;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import pippinry.nursery.internal.view.Doors;
import pippinry.panels.Door;
import pippinry.panels.Panel;
import pippinry.panels.PanelContext;

/** The way in for somebody whose seedlings stand there already. */
@Component
public final class SeedlingsDoor implements Door {

    @Activate
    public SeedlingsDoor() {}

    @Override
    public int order() {
        return 1;
    }

    @Override
    public String title() {
        return "I have seedlings already";
    }

    @Override
    public String words() {
        return "Asks for their mother, the year, how many and in which row. You get numbers, tags to print, a map of the"
                + " row and a score sheet.";
    }

    @Override
    public String later() {
        return "Add seedlings that are there";
    }

    @Override
    public Panel open(PanelContext context, Runnable back) {
        return Doors.seedlings(context, back);
    }
}
