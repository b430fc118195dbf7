package pippinry.store.internal.ledger;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The files of a ledger, {@code 000001.jsonl} and so on, or of its backup. */
public record LedgerFolder(Path path) {

    private static final String NAME = "\\d{6}\\.jsonl";

    /** The ledger in a program folder. */
    public static LedgerFolder of(Path program) {
        return new LedgerFolder(program.resolve("ledger"));
    }

    static LedgerFolder backupOf(Path program) {
        return new LedgerFolder(program.resolve("backup"));
    }

    /** Whether there is a program in the folder, were it only the backup of its ledger. */
    public static boolean isIn(Path program) {
        return Stream.of(of(program), backupOf(program)).anyMatch(LedgerFolder::hasFiles);
    }

    private boolean hasFiles() {
        try {
            return !segments().isEmpty();
        } catch (IOException e) {
            return false;
        }
    }

    Path file(int segment) {
        return path.resolve("%06d.jsonl".formatted(segment));
    }

    /** Numbers of the files that are there, in order. */
    List<Integer> segments() throws IOException {
        if (!Files.isDirectory(path)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(path)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.matches(NAME))
                    .map(name -> Integer.valueOf(name.substring(0, 6)))
                    .sorted()
                    .toList();
        }
    }

    /** Of all files together; 0 if they cannot be read. */
    public long length() {
        try {
            long length = 0;
            for (int segment : segments()) {
                length += length(segment);
            }
            return length;
        } catch (IOException e) {
            return 0;
        }
    }

    /** The file's length; 0 if it is not there. */
    long length(int segment) throws IOException {
        Path file = file(segment);
        return Files.exists(file) ? Files.size(file) : 0;
    }
}
