package pippinry.host;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.osgi.framework.FrameworkEvent;
import org.osgi.framework.FrameworkListener;

/** The framework reports a bundle that does not start as an event and goes on; we do not. */
final class StartFaults implements FrameworkListener {

    private final List<String> faults = new CopyOnWriteArrayList<>();

    @Override
    public void frameworkEvent(FrameworkEvent event) {
        if (event.getType() == FrameworkEvent.ERROR) {
            faults.add(event.getBundle().getSymbolicName() + ": "
                    + event.getThrowable().getMessage());
        }
    }

    void check() {
        if (!faults.isEmpty()) {
            throw CannotStart.broken("These bundles did not start:\n  " + String.join("\n  ", faults));
        }
    }
}
