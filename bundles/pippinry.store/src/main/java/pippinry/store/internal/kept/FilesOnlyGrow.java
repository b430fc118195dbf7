package pippinry.store.internal.kept;

import org.eclipse.store.storage.types.StorageDataFileEvaluator;
import org.eclipse.store.storage.types.StorageLiveDataFile;

/**
 * Keeps the engine from moving what it has written: the seal reads back only what was added. When too much of a folder is
 * of no more use, all of it is written anew.
 */
final class FilesOnlyGrow implements StorageDataFileEvaluator {

    private static final int SMALLEST = 1 << 20;
    private static final int LARGEST = 1 << 26;

    @Override
    public boolean needsDissolving(StorageLiveDataFile file) {
        return false;
    }

    @Override
    public boolean needsRetirement(long length) {
        return length >= LARGEST;
    }

    @Override
    public int fileMinimumSize() {
        return SMALLEST;
    }

    @Override
    public int fileMaximumSize() {
        return LARGEST;
    }

    @Override
    public int transactionFileMaximumSize() {
        return Integer.MAX_VALUE;
    }
}
