package pippinry.host;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;

/** The framework's own files, of one process only, gone with it. */
public record Cache(Path folder) {

    /** A new folder among the machine's temporary ones. */
    public static Cache ofThisProcess() {
        try {
            return new Cache(Files.createTempDirectory("pippinry-"));
        } catch (IOException e) {
            throw CannotStart.broken("Cannot make a temporary folder in " + System.getProperty("java.io.tmpdir"), e);
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
