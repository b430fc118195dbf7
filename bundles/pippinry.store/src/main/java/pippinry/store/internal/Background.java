package pippinry.store.internal;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import pippinry.model.Program;
import pippinry.model.Settled;
import pippinry.store.internal.kept.Keeping;
import pippinry.store.internal.ledger.Backup;
import pippinry.store.internal.ledger.LedgerEnd;

/** What goes on behind an open program: the store folder is kept up and the ledger is backed up. */
final class Background implements AutoCloseable {

    private final Keeping keeping;
    private final Backup backup;
    private final List<String> notices;

    Background(Keeping keeping, Backup backup, List<String> notices) {
        this.keeping = keeping;
        this.backup = backup;
        this.notices = new CopyOnWriteArrayList<>(notices);
    }

    void changed(Program program, int sum, List<Settled<?>> changes) {
        keeping.owe(program, sum, changes);
    }

    void backUp(LedgerEnd end) {
        keeping.beside(() -> copy(end));
    }

    private void copy(LedgerEnd end) {
        try {
            backup.bringUp(end);
        } catch (IOException e) {
            notice("The backup was not made: " + e.getMessage() + ". The program itself is on disk.");
        }
    }

    void notice(String words) {
        notices.add(words);
    }

    List<String> notices() {
        List<String> all = new ArrayList<>(notices);
        keeping.failure()
                .ifPresent(e -> all.add("The fast copy of the program could not be written (" + e.getMessage()
                        + "); it is made again when the program is opened next. The program itself is on disk."));
        return List.copyOf(all);
    }

    @Override
    public void close() {
        keeping.close();
    }
}
