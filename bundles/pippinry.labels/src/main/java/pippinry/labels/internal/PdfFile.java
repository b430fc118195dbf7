package pippinry.labels.internal;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import pippinry.commandline.CallRefused;

/** A file that is there whole or not at all: it is written beside its place and moved there when all went well. */
final class PdfFile implements AutoCloseable {
    private final Path place;
    private final Path beside;

    private PdfFile(Path place, Path beside) {
        this.place = place;
        this.beside = beside;
    }

    static PdfFile at(Path place) throws CallRefused {
        Path whole = place.toAbsolutePath();
        if (Files.isDirectory(whole)) {
            throw new CallRefused("--out " + place + " is a folder; name a file in it, such as tags.pdf");
        }
        try {
            Files.createDirectories(whole.getParent());
            return new PdfFile(whole, Files.createTempFile(whole.getParent(), ".pippinry", ".part"));
        } catch (IOException e) {
            throw new CallRefused("Nothing can be written to " + place + ": " + e);
        }
    }

    OutputStream open() throws IOException {
        return Files.newOutputStream(beside);
    }

    void keep() throws IOException {
        Files.move(beside, place, StandardCopyOption.REPLACE_EXISTING);
    }

    @Override
    public void close() throws IOException {
        Files.deleteIfExists(beside);
    }
}
