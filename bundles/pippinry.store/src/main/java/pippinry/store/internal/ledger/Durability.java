package pippinry.store.internal.ledger;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** How hard a write is pressed to disk. */
public enum Durability {
    /** The disk has confirmed it: survives a power cut. */
    FORCED {
        @Override
        void force(RandomAccessFile file) throws IOException {
            file.getFD().sync();
        }

        @Override
        void forceEntries(Path folder) throws IOException {
            // An interrupt would close the channel in the middle; it is kept for the caller.
            boolean interrupted = Thread.interrupted();
            try (FileChannel channel = open(folder)) {
                if (channel != null) {
                    channel.force(true);
                }
            } finally {
                if (interrupted) {
                    Thread.currentThread().interrupt();
                }
            }
        }
    },
    /** The operating system writes it when it likes: survives a killed process. For tests that write thousands of edits. */
    LEFT_TO_SYSTEM {
        @Override
        void force(RandomAccessFile file) {}

        @Override
        void forceEntries(Path folder) {}
    };

    abstract void force(RandomAccessFile file) throws IOException;

    /** Makes sure that files made, renamed or removed in the folder are so after a power cut. */
    abstract void forceEntries(Path folder) throws IOException;

    /** Null on a system that opens no folders; it writes their entries in order by itself. */
    private static FileChannel open(Path folder) throws IOException {
        boolean windows = System.getProperty("os.name").startsWith("Windows");
        return windows ? null : FileChannel.open(folder, StandardOpenOption.READ);
    }
}
