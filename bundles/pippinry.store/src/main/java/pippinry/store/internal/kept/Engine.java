package pippinry.store.internal.kept;

import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.serializer.reflect.ClassLoaderProvider;
import org.eclipse.store.storage.embedded.types.EmbeddedStorage;
import org.eclipse.store.storage.embedded.types.EmbeddedStorageManager;

/** Eclipse Store, started on one folder. One thread at a time. */
final class Engine implements AutoCloseable {

    private final EmbeddedStorageManager storage;

    private Engine(EmbeddedStorageManager storage) {
        this.storage = storage;
    }

    static Engine start(Path folder) {
        return new Engine(EmbeddedStorage.Foundation(folder)
                .onConnectionFoundation(connection ->
                        connection.setClassLoaderProvider(ClassLoaderProvider.New(new StorageClassLoader())))
                .start());
    }

    Optional<KeptRoot> root() {
        return Optional.ofNullable((KeptRoot) storage.root());
    }

    /** Writes the root and what it holds that is not written yet. */
    void store(KeptRoot root) {
        if (storage.root() == root) {
            storage.store(root);
        } else {
            storage.setRoot(root);
            storage.storeRoot();
        }
    }

    @Override
    public void close() {
        storage.shutdown();
    }
}
