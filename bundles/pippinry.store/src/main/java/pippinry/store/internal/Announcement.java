package pippinry.store.internal;

import java.util.List;
import pippinry.model.HistoryLine;
import pippinry.model.Settled;

/** Told of every edit once it is on disk, in order. */
interface Announcement {

    void changed(HistoryLine edit, List<Settled<?>> changes);
}
