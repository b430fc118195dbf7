package pippinry.workbench.internal;

import java.awt.GraphicsEnvironment;
import java.lang.reflect.InvocationTargetException;
import java.time.Clock;
import java.util.Optional;
import javax.swing.SwingUtilities;
import org.osgi.framework.BundleContext;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Deactivate;
import org.osgi.service.event.Event;
import org.osgi.service.event.EventHandler;
import pippinry.model.ProgramStore;
import pippinry.panels.Workbench;
import pippinry.workbench.internal.view.WorkbenchWindow;

/** Shows the window, lets panels come and go with their bundles, and shows the program anew when it changes. */
@Component(
        service = {Workbench.class, EventHandler.class},
        property = "event.topics=" + ProgramStore.CHANGED)
public final class SwingWorkbench implements Workbench, EventHandler {

    private final BundleContext context;
    private volatile Optional<WorkbenchWindow> window = Optional.empty();

    @Activate
    public SwingWorkbench(BundleContext context) {
        this.context = context;
    }

    @Override
    public boolean hasDisplay() {
        return !GraphicsEnvironment.isHeadless();
    }

    @Override
    public void show(ProgramStore store, Clock clock, String author, Commands run) throws InterruptedException {
        Session session = new Session(store, clock, author, run);
        OwnFolder folder = OwnFolder.ofThisPerson(System.getenv());
        Arrivals arrivals = new Arrivals(context);
        try {
            do {
                onDispatchThread(() -> open(session, folder, arrivals));
            } while (window.orElseThrow().awaitClose());
        } finally {
            arrivals.end();
            window = Optional.empty();
        }
    }

    private void open(Session session, OwnFolder folder, Arrivals arrivals) {
        WorkbenchWindow.installLook(folder);
        window = Optional.of(new WorkbenchWindow(session, folder, arrivals.begin()));
        arrivals.tell(window.get());
    }

    /** Edits of this window were shown already; those that come by another way are shown here. */
    @Override
    public void handleEvent(Event event) {
        window.ifPresent(shown -> SwingUtilities.invokeLater(shown::refresh));
    }

    @Deactivate
    void stop() throws InterruptedException {
        if (window.isPresent()) {
            onDispatchThread(window.get()::close);
        }
    }

    static void onDispatchThread(Runnable work) throws InterruptedException {
        if (SwingUtilities.isEventDispatchThread()) {
            work.run();
            return;
        }
        try {
            SwingUtilities.invokeAndWait(work);
        } catch (InvocationTargetException e) {
            throw new IllegalStateException("The window could not be shown", e.getCause());
        }
    }
}
