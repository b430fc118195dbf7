package pippinry.store.internal.kept;

import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.serializer.reflect.ClassLoaderProvider;
import org.eclipse.store.storage.embedded.types.EmbeddedStorage;
import org.eclipse.store.storage.embedded.types.EmbeddedStorageManager;
import org.eclipse.store.storage.types.Storage;
import org.eclipse.store.storage.types.StorageConfiguration;

/** Eclipse Store, started on one folder. One thread at a time. */
final class Engine implements AutoCloseable {

    /** We hold all objects ourselves; the engine need not keep their bytes for us. */
    private static final long CACHE_MILLIS = 1_000;

    private static final long CACHE_BYTES = 1;

    private final EmbeddedStorageManager storage;

    private Engine(EmbeddedStorageManager storage) {
        this.storage = storage;
    }

    static Engine start(Path folder) {
        StorageConfiguration configuration = Storage.ConfigurationBuilder()
                .setStorageFileProvider(Storage.FileProvider(folder))
                .setDataFileEvaluator(new FilesOnlyGrow())
                .setEntityCacheEvaluator(Storage.EntityCacheEvaluator(CACHE_MILLIS, CACHE_BYTES))
                .createConfiguration();
        return new Engine(EmbeddedStorage.Foundation(configuration)
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
