package pippinry.probe;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Hashtable;
import java.util.List;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.Callable;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.osgi.framework.BundleContext;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.event.Event;
import org.osgi.service.event.EventConstants;
import org.osgi.service.event.EventHandler;
import pippinry.model.Edit;
import pippinry.model.ProgramFolders;
import pippinry.model.ProgramStore;
import pippinry.model.record.Kinds;

/** Makes a program, closes it, and tells what is found when it is opened again, and which edits were announced. */
@Component(service = Callable.class, property = "probe=keeps")
public final class KeepsRecords implements Callable<List<String>> {

    private static final long PATIENCE_SECONDS = 20;

    private final ProgramFolders folders;
    private final BlockingQueue<Event> heard = new LinkedBlockingQueue<>();

    @Activate
    public KeepsRecords(@Reference ProgramFolders folders, BundleContext context) {
        this.folders = folders;
        EventHandler handler = heard::add;
        context.registerService(
                EventHandler.class, handler, new Hashtable<>(Map.of(EventConstants.EVENT_TOPIC, ProgramStore.CHANGED)));
    }

    @Override
    public List<String> call() throws Exception {
        Path folder = Files.createTempDirectory("pippinry-probe").resolve("program");
        try (ProgramStore store = folders.create(folder, Clock.systemUTC())) {
            store.apply(Edit.by("IN", "first")
                    .put(Kinds.GENOTYPES, Kinds.GENOTYPES.read(name -> Map.of("code", "FIE")
                            .getOrDefault(name, "")))
                    .done());
        }
        List<String> told = new ArrayList<>();
        try (ProgramStore store = folders.open(folder, Clock.systemUTC())) {
            store.now().table(Kinds.GENOTYPES).stream()
                    .forEach(row -> told.add(row.code().text()));
            told.addAll(store.notices());
        }
        Event event = heard.poll(PATIENCE_SECONDS, TimeUnit.SECONDS);
        told.add(event == null ? "nothing announced" : "edit " + event.getProperty(ProgramStore.EVENT_EDIT));
        return told;
    }
}
