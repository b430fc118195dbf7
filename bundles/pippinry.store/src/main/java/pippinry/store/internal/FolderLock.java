package pippinry.store.internal;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import pippinry.model.StoreFailed;
import pippinry.store.internal.ledger.Trouble;

/**
 * The right to write in a program folder: a lock of the operating system on the file {@code lock}, which is gone with the
 * process however that ends. Who holds it stands beside it in {@code lock-holder.txt}, for those who are refused.
 */
final class FolderLock implements AutoCloseable {

    /**
     * Folders that this process has locked. Asked before the file is even opened: on many systems closing any channel
     * to a file lets go of every lock that the process has on it.
     */
    private static final Set<Path> OURS = ConcurrentHashMap.newKeySet();

    private final Path folder;
    private final FileChannel channel;

    private FolderLock(Path folder, FileChannel channel) {
        this.folder = folder;
        this.channel = channel;
    }

    /** @throws StoreFailed if another has it, and who, or if the folder cannot be written */
    static FolderLock take(Path program, LockHolder holder) {
        try {
            Path folder = program.toRealPath();
            if (!OURS.add(folder)) {
                throw refused(folder);
            }
            try {
                return lock(folder, holder);
            } catch (IOException | RuntimeException e) {
                OURS.remove(folder);
                throw e;
            }
        } catch (IOException e) {
            throw Trouble.with("The program could not be locked for writing", program, e);
        }
    }

    private static FolderLock lock(Path folder, LockHolder holder) throws IOException {
        FileChannel channel =
                FileChannel.open(folder.resolve("lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        try {
            if (channel.tryLock() == null) {
                throw refused(folder);
            }
            holder.write(folder);
            return new FolderLock(folder, channel);
        } catch (IOException | RuntimeException e) {
            channel.close();
            throw e;
        }
    }

    private static StoreFailed refused(Path folder) {
        String who = LockHolder.read(folder).map(LockHolder::toString).orElse("another process");
        return new StoreFailed("The program in " + folder + " is open elsewhere: by " + who
                + ". Close it there, or open it here to read only.");
    }

    @Override
    public void close() {
        try {
            LockHolder.remove(folder);
            channel.close();
        } catch (IOException e) {
            throw Trouble.with("The lock was not given back", folder, e);
        } finally {
            OURS.remove(folder);
        }
    }
}
