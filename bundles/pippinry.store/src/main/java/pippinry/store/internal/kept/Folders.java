package pippinry.store.internal.kept;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Removes folders with all that is in them. */
final class Folders {

    private Folders() {}

    static void remove(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            List<Path> inward = files.sorted(Comparator.reverseOrder()).toList();
            for (Path file : inward) {
                Files.delete(file);
            }
        }
    }
}
