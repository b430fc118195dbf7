package pippinry.season.internal;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a file that is there whole or not at all; one that stands there is replaced only when the new one is whole. */
final class WholeFile {

    private WholeFile() {}

    /** @return what the writing returns, such as a number of pages */
    static int write(Path file, Writing writing) throws IOException {
        Path unfinished = file.resolveSibling(file.getFileName() + ".unfinished");
        try {
            int pages;
            try (OutputStream stream = Files.newOutputStream(unfinished)) {
                pages = writing.write(stream);
            }
            Files.move(unfinished, file, StandardCopyOption.REPLACE_EXISTING);
            return pages;
        } finally {
            Files.deleteIfExists(unfinished);
        }
    }

    /** Writes the content. */
    @FunctionalInterface
    interface Writing {
        int write(OutputStream stream) throws IOException;
    }
}
