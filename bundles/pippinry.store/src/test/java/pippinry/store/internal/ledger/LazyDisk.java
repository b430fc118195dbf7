package pippinry.store.internal.ledger;

import java.io.RandomAccessFile;
import java.nio.file.Path;

/** Leaves it to the system when to write, for tests that make thousands of edits; survives a killed process all the same. */
public class LazyDisk extends Disk {

    @Override
    void force(RandomAccessFile file) {}

    @Override
    void forceEntries(Path folder) {}
}
