package pippinry.store.internal.kept;

import org.eclipse.store.storage.embedded.types.EmbeddedStorage;

/** Finds our own classes first, then those of the storage engine: in OSGi neither sees the other's. */
final class StorageClassLoader extends ClassLoader {

    private static final ClassLoader ENGINE = EmbeddedStorage.class.getClassLoader();

    StorageClassLoader() {
        super(StorageClassLoader.class.getClassLoader());
    }

    @Override
    protected Class<?> findClass(String name) throws ClassNotFoundException {
        return ENGINE.loadClass(name);
    }
}
