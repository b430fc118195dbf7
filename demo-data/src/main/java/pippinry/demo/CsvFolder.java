package pippinry.demo;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Writes tables as RFC 4180 files into a folder of their own. */
final class CsvFolder {

    private final Path folder;

    CsvFolder(Path folder) {
        this.folder = folder;
    }

    /** Removes what an earlier run left and makes the folder anew. */
    void clear() {
        try {
            if (Files.exists(folder)) {
                try (Stream<Path> files = Files.walk(folder)) {
                    files.sorted(Comparator.reverseOrder()).forEach(CsvFolder::delete);
                }
            }
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    CsvFolder child(String name) {
        try {
            return new CsvFolder(Files.createDirectories(folder.resolve(name)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    void table(String fileName, List<String> header, List<List<String>> lines) {
        try (CsvWriter csv = CsvWriter.builder()
                .lineDelimiter(LineDelimiter.CRLF)
                .build(folder.resolve(fileName), StandardCharsets.UTF_8)) {
            csv.writeRecord(header);
            lines.forEach(csv::writeRecord);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    void text(String fileName, String text) {
        try {
            Files.writeString(folder.resolve(fileName), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void delete(Path path) {
        try {
            Files.delete(path);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
