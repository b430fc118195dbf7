package pippinry.store.internal;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Deactivate;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.event.EventAdmin;
import pippinry.model.ProgramFolders;
import pippinry.model.ProgramStore;
import pippinry.store.internal.ledger.Disk;
import pippinry.store.internal.ledger.LedgerFolder;

/** Opens programs, and closes those that are still open when the bundle stops. */
@Component
public final class ProgramFoldersOnDisk implements ProgramFolders {

    private final Set<ProgramStore> open = ConcurrentHashMap.newKeySet();

    /** Comes and goes; a program stays open without it. */
    @Reference(cardinality = ReferenceCardinality.OPTIONAL, policy = ReferencePolicy.DYNAMIC)
    private volatile EventAdmin bus;

    @Activate
    public ProgramFoldersOnDisk() {}

    @Override
    public boolean isProgram(Path folder) {
        return LedgerFolder.isIn(folder);
    }

    @Override
    public ProgramStore create(Path folder, Clock clock) {
        return remembered(opening(folder, clock).create());
    }

    @Override
    public ProgramStore open(Path folder, Clock clock) {
        return remembered(opening(folder, clock).open());
    }

    @Override
    public ProgramStore openToRead(Path folder, Clock clock) {
        return opening(folder, clock).openToRead();
    }

    private FolderOpening opening(Path folder, Clock clock) {
        return new FolderOpening(folder, clock, new Disk(), new BusAnnouncement(folder, () -> bus));
    }

    private ProgramStore remembered(ProgramStore store) {
        open.removeIf(other -> other instanceof LedgerStore ledger && ledger.isClosed());
        open.add(store);
        return store;
    }

    @Deactivate
    void close() {
        open.forEach(ProgramStore::close);
    }
}
