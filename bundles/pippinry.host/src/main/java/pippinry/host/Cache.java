package pippinry.host;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;

/** The framework's own files, of one process only, gone with it. */
public record Cache(Path folder) {

    /** Linux keeps this one in memory: some hundred small files cost a fifth of what they cost on a disk (seen). */
    private static final Path IN_MEMORY = Path.of("/dev/shm");

    /** A new folder among the machine's temporary ones. */
    public static Cache ofThisProcess() {
        Path parent = Files.isWritable(IN_MEMORY) ? IN_MEMORY : Path.of(System.getProperty("java.io.tmpdir"));
        try {
            return new Cache(Files.createTempDirectory(parent, "pippinry-"));
        } catch (IOException e) {
            throw CannotStart.broken("Cannot make a temporary folder in " + parent, e);
        }
    }

    void remove() throws IOException {
        if (Files.exists(folder)) {
            Files.walkFileTree(folder, new Removal());
        }
    }

    private static final class Removal extends SimpleFileVisitor<Path> {

        @Override
        public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
            Files.delete(file);
            return FileVisitResult.CONTINUE;
        }

        @Override
        public FileVisitResult postVisitDirectory(Path folder, IOException failure) throws IOException {
            Files.delete(folder);
            return FileVisitResult.CONTINUE;
        }
    }
}
