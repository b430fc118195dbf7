package pippinry.store.internal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.verify;

import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.mockito.ArgumentCaptor;
import org.osgi.service.event.Event;
import org.osgi.service.event.EventAdmin;
import pippinry.model.Edit;
import pippinry.model.ProgramStore;
import pippinry.model.record.Kinds;
import pippinry.store.internal.ledger.LazyDisk;

class BusAnnouncementTest {

    @TempDir
    Path temp;

    @Test
    void theBusHearsWhatChangedByTableAndKey() throws Exception {
        EventAdmin bus = mock(EventAdmin.class);
        Path folder = temp.resolve("larkmoor");
        try (ProgramStore store = opening(folder, bus).create()) {
            store.apply(Edit.by("IN", "first")
                    .put(Kinds.GENOTYPES, Rows.genotype("FIE", "Fiesta"))
                    .put(Kinds.PLANTS, Rows.plant("FIE-A", "FIE"))
                    .put(Kinds.SCORES, Rows.score("FIE", "brix", "12"))
                    .done());
        }
        ArgumentCaptor<Event> event = ArgumentCaptor.forClass(Event.class);
        verify(bus).postEvent(event.capture());
        assertEquals(ProgramStore.CHANGED, event.getValue().getTopic());
        assertEquals(folder.toString(), event.getValue().getProperty(ProgramStore.EVENT_FOLDER));
        assertEquals(1L, event.getValue().getProperty(ProgramStore.EVENT_EDIT));
        assertArrayEquals(new String[] {"genotypes", "plants", "scores"}, (String[])
                event.getValue().getProperty(ProgramStore.EVENT_TABLES));
        assertArrayEquals(new String[] {"FIE", "FIE-A", "row 0"}, (String[])
                event.getValue().getProperty(ProgramStore.EVENT_KEYS));
    }

    @Test
    void withoutABusEditsAreMadeAllTheSame() throws Exception {
        try (ProgramStore store = opening(temp.resolve("larkmoor"), null).create()) {
            assertEquals(1, Programs.put(store, "FIE", "Fiesta").number());
        }
    }

    private static FolderOpening opening(Path folder, EventAdmin bus) {
        return new FolderOpening(folder, Clock.systemUTC(), new LazyDisk(), new BusAnnouncement(folder, () -> bus));
    }
}
