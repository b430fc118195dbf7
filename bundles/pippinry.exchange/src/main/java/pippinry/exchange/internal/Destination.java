package pippinry.exchange.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import pippinry.commandline.CallRefused;

/** Where an export goes. Nothing that lies there is written over unless the person says so. */
record Destination(Path out, boolean replace) {

    /** The folder to write into, made if it is not there. */
    Path folder() throws CallRefused, IOException {
        if (Files.exists(out) && !Files.isDirectory(out)) {
            throw new CallRefused(out + " is a file; name a folder for the tables");
        }
        if (Files.isDirectory(out) && !replace && !isEmpty(out)) {
            throw new CallRefused(out + " is not empty; name a new folder, or add --replace");
        }
        return Files.createDirectories(out);
    }

    /** The file to write; in a folder that is there it gets this name. */
    Path file(String name) throws CallRefused, IOException {
        Path file = Files.isDirectory(out) ? out.resolve(name) : out;
        if (Files.exists(file) && Files.size(file) > 0 && !replace) {
            throw new CallRefused(file + " is there already; name a new file, or add --replace");
        }
        if (file.toAbsolutePath().getParent() != null) {
            Files.createDirectories(file.toAbsolutePath().getParent());
        }
        return file;
    }

    private static boolean isEmpty(Path folder) throws IOException {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.findAny().isEmpty();
        }
    }

    /** Writes to a file beside it first, so that a failure leaves no half file under the name. */
    static void write(Path file, Writing writing) throws IOException {
        Path part = file.resolveSibling(file.getFileName() + ".part");
        try {
            writing.to(part);
            Files.move(part, file, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    /** What is written. */
    interface Writing {
        void to(Path file) throws IOException;
    }

    /** Takes out tables of an earlier export that would now be empty. */
    static void removeStale(Path folder, List<String> names) throws IOException {
        for (String name : names) {
            Files.deleteIfExists(folder.resolve(name));
        }
    }
}
