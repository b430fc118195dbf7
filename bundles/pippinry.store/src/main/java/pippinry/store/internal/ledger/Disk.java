package pippinry.store.internal.ledger;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** How files are opened to be written and pressed to disk, so that they survive a power cut. */
public class Disk {

    private static final boolean WINDOWS = System.getProperty("os.name").startsWith("Windows");

    // Not a channel: a thread that is interrupted while it writes would close it half way.
    RandomAccessFile open(Path file) throws FileNotFoundException {
        return new RandomAccessFile(file.toFile(), "rw");
    }

    /** Returns when the disk has confirmed all that was written to the file. */
    void force(RandomAccessFile file) throws IOException {
        file.getFD().sync();
    }

    /** Makes sure that files made, renamed or removed in the folder are so after a power cut. */
    void forceEntries(Path folder) throws IOException {
        if (WINDOWS) {
            // It opens no folders as files, and writes their entries in order by itself.
            return;
        }
        // An interrupt would close this channel, too; it is kept for the caller.
        boolean interrupted = Thread.interrupted();
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } finally {
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }
}
