package pippinry.store.internal.kept;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import pippinry.model.Program;
import pippinry.model.Settled;

/**
 * The one thread that writes the store folder, behind the ledger. It may lag; what came meanwhile is written together.
 * Work that is done beside it, such as the backup, waits in the same line.
 */
public final class Keeping implements AutoCloseable {

    private record Owed(Program program, int sum, Touched touched) {}

    private final StoreFolder folder;
    private final Thread thread;
    private Optional<Owed> owed = Optional.empty();
    private Optional<Runnable> beside = Optional.empty();
    private boolean closing;
    private Optional<Throwable> failure = Optional.empty();

    public Keeping(StoreFolder folder, String name) {
        this.folder = folder;
        this.thread = new Thread(this::run, name);
        this.thread.setDaemon(true);
    }

    public void start() {
        thread.start();
    }

    /**
     * The program changed: these rows of it are to be written.
     *
     * @param sum of the ledger at its last edit
     */
    public synchronized void owe(Program program, int sum, List<Settled<?>> changes) {
        Touched touched = owed.map(Owed::touched).orElseGet(Touched::new);
        touched.add(program, changes);
        owed = Optional.of(new Owed(program, sum, touched));
        notifyAll();
    }

    /** The same for what was touched since it was written last. */
    public synchronized void owe(Program program, int sum, Touched touched) {
        owed = Optional.of(new Owed(program, sum, touched));
        notifyAll();
    }

    /** Has this done by the same thread, after what is owed; only the last that waits is done. */
    public synchronized void beside(Runnable work) {
        beside = Optional.of(work);
        notifyAll();
    }

    private void run() {
        for (Optional<Runnable> work = next(); work.isPresent(); work = next()) {
            work.get().run();
        }
    }

    /** Empty when all is done and nothing more will come. */
    private synchronized Optional<Runnable> next() {
        while (owed.isEmpty() && beside.isEmpty() && !closing) {
            try {
                wait();
            } catch (InterruptedException e) {
                // Nobody but a stranger interrupts this thread, and what is owed must be written all the same.
            }
        }
        if (owed.isPresent()) {
            Owed all = owed.get();
            owed = Optional.empty();
            return Optional.of(() -> write(all));
        }
        Optional<Runnable> work = beside;
        beside = Optional.empty();
        return work;
    }

    private void write(Owed all) {
        if (failure.isPresent()) {
            return;
        }
        try {
            folder.write(all.program(), all.touched(), all.sum());
        } catch (IOException | RuntimeException | Error e) {
            failed(e);
        }
    }

    private synchronized void failed(Throwable e) {
        failure = Optional.of(e);
    }

    /** Why the store folder could not be written; what is in it is then older than the ledger. */
    public synchronized Optional<Throwable> failure() {
        return failure;
    }

    /** Writes what is owed, then lets go of the folder. */
    @Override
    public void close() {
        synchronized (this) {
            closing = true;
            notifyAll();
        }
        boolean interrupted = false;
        while (thread.isAlive()) {
            try {
                thread.join();
            } catch (InterruptedException e) {
                interrupted = true;
            }
        }
        folder.close();
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
