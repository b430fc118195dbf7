package pippinry.store.internal;

import java.io.IOException;
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
            notices.add("The backup was not made: " + e.getMessage() + ". The program itself is on disk.");
        }
    }

    List<String> notices() {
        return List.copyOf(notices);
    }

    @Override
    public void close() {
        keeping.close();
    }
}
