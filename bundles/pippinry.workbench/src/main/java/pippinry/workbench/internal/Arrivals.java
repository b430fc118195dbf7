package pippinry.workbench.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceReference;
import org.osgi.util.tracker.ServiceTracker;
import pippinry.panels.PanelProvider;
import pippinry.workbench.internal.view.WorkbenchWindow;

/**
 * Watches for panels. Those that come within a moment are placed together, so that the order in which bundles start does
 * not shape the desk. A panel that leaves is gone from the window before its bundle has stopped.
 */
final class Arrivals extends ServiceTracker<PanelProvider, PanelProvider> {

    private static final int MOMENT_MILLIS = 150;

    private final List<PanelProvider> waiting = new ArrayList<>();
    private volatile Optional<WorkbenchWindow> window = Optional.empty();

    Arrivals(BundleContext context) {
        super(context, PanelProvider.class, null);
    }

    /** Starts watching, or watches for another window. @return the panels that are there already */
    List<PanelProvider> begin() {
        window = Optional.empty();
        if (getTrackingCount() < 0) {
            open();
        }
        waiting.clear();
        return List.copyOf(getTracked().values());
    }

    /** The window is gone. */
    void end() {
        window = Optional.empty();
        close();
    }

    void tell(WorkbenchWindow shown) {
        window = Optional.of(shown);
    }

    @Override
    public PanelProvider addingService(ServiceReference<PanelProvider> reference) {
        PanelProvider provider = super.addingService(reference);
        if (SwingUtilities.isEventDispatchThread()) {
            waiting.add(provider);
        } else {
            SwingUtilities.invokeLater(() -> await(provider));
        }
        return provider;
    }

    private void await(PanelProvider provider) {
        waiting.add(provider);
        Timer timer = new Timer(MOMENT_MILLIS, event -> place());
        timer.setRepeats(false);
        timer.start();
    }

    private void place() {
        List<PanelProvider> come = List.copyOf(waiting);
        waiting.clear();
        if (!come.isEmpty()) {
            window.ifPresent(shown -> shown.arrive(come));
        }
    }

    @Override
    public void removedService(ServiceReference<PanelProvider> reference, PanelProvider provider) {
        try {
            SwingWorkbench.onDispatchThread(() -> {
                if (!waiting.remove(provider)) {
                    window.ifPresent(shown -> shown.leave(provider));
                }
            });
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        super.removedService(reference, provider);
    }
}
