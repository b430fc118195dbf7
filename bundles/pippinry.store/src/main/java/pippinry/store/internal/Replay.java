package pippinry.store.internal;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import pippinry.model.Program;
import pippinry.model.Settled;
import pippinry.store.internal.ledger.EditHead;
import pippinry.store.internal.ledger.EditReader;
import pippinry.store.internal.ledger.Edits;
import pippinry.store.internal.ledger.Entry;

/** Takes a program forward or back along the ledger, some thousand records at a time, however far it is. */
final class Replay {

    private static final int AT_ONCE = 20_000;

    private final Edits edits;
    private final EditReader reader;
    private final List<Settled<?>> waiting = new ArrayList<>();
    private final Consumer<List<Settled<?>>> watcher;
    private Program program;

    Replay(Edits edits, Program from) {
        this(edits, from, changes -> {});
    }

    /** @param watcher is shown all changes on the way */
    Replay(Edits edits, Program from, Consumer<List<Settled<?>>> watcher) {
        this.watcher = watcher;
        this.edits = edits;
        this.reader = new EditReader(edits.folder());
        this.program = from;
    }

    Program to(long edit) {
        return edit >= program.edit() ? forward(edit) : back(edit);
    }

    private Program forward(long to) {
        reader.read(edits.edits(program.edit() + 1, to), this::take);
        if (to > program.edit() || !waiting.isEmpty()) {
            settle(edits.edit(to).head());
        }
        return program;
    }

    private void take(EditHead edit, List<Settled<?>> changes) {
        waiting.addAll(changes);
        if (waiting.size() >= AT_ONCE) {
            settle(edit);
        }
    }

    private void settle(EditHead at) {
        program = program.with(waiting, at.number(), at.time());
        watcher.accept(waiting);
        waiting.clear();
    }

    private Program back(long to) {
        for (long number = program.edit(); number > to; number--) {
            takeBack(edits.edit(number));
        }
        Instant time = to == 0 ? Instant.EPOCH : edits.edit(to).head().time();
        return program.with(waiting, to, time);
    }

    private void takeBack(Entry edit) {
        reader.readBackwards(edit, (head, changes) -> {
            for (int i = changes.size() - 1; i >= 0; i--) {
                waiting.add(changes.get(i).reversed());
            }
            if (waiting.size() >= AT_ONCE) {
                settle(head);
            }
        });
    }
}
