package pippinry.store.internal;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.osgi.service.event.Event;
import org.osgi.service.event.EventAdmin;
import pippinry.model.HistoryLine;
import pippinry.model.ProgramStore;
import pippinry.model.Settled;

/** Puts each edit on the event bus, if there is one. */
final class BusAnnouncement implements Announcement {

    private static final int KEYS = 1_000;

    private final Path folder;
    private final Supplier<EventAdmin> bus;

    /** @param bus gives null when there is none */
    BusAnnouncement(Path folder, Supplier<EventAdmin> bus) {
        this.folder = folder;
        this.bus = bus;
    }

    @Override
    public void changed(HistoryLine edit, List<Settled<?>> changes) {
        EventAdmin now = bus.get();
        if (now != null) {
            now.postEvent(new Event(ProgramStore.CHANGED, properties(edit, changes)));
        }
    }

    private Map<String, Object> properties(HistoryLine edit, List<Settled<?>> changes) {
        return Map.of(
                ProgramStore.EVENT_FOLDER, folder.toString(),
                ProgramStore.EVENT_EDIT, edit.number(),
                ProgramStore.EVENT_TABLES,
                        changes.stream()
                                .map(change -> change.kind().table())
                                .distinct()
                                .toArray(String[]::new),
                ProgramStore.EVENT_KEYS,
                        changes.stream()
                                .flatMap(BusAnnouncement::keys)
                                .distinct()
                                .limit(KEYS)
                                .toArray(String[]::new));
    }

    private static <T extends Record> Stream<String> keys(Settled<T> change) {
        return Stream.concat(change.before().stream(), change.after().stream())
                .map(row -> change.kind().keyOf(row).orElse("row " + change.id()));
    }
}
