package pippinry.store.internal.kept;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.CRC32C;

/**
 * Vouches for the files of the storage engine, which checks none of its bytes itself and on a file that was cut short or
 * damaged may read for ever. After each write a line is added that names every file with its length and the sum of its
 * bytes. Before the engine is started, the files must be so; what was written after the last line is cut off, which is the
 * state after an earlier whole write.
 */
final class Seal {

    private static final String SEPARATOR = "\t";

    private final Path file;
    private final Path folder;
    private Map<String, SealedFile> sealed = new TreeMap<>();

    /** @param folder of the engine's files */
    Seal(Path file, Path folder) {
        this.file = file;
        this.folder = folder;
    }

    /** Brings the files to what they were after the last write that was sealed. @throws NotWhole if they cannot be */
    void restore() throws IOException {
        sealed = lastLine();
        for (Map.Entry<String, SealedFile> entry : sealed.entrySet()) {
            if (!entry.getValue().isStartOf(folder.resolve(entry.getKey()))) {
                throw new NotWhole("its file " + entry.getKey() + " is not as it was written");
            }
        }
        for (String name : names()) {
            if (sealed.containsKey(name)) {
                cut(folder.resolve(name), sealed.get(name).length());
            } else {
                Files.delete(folder.resolve(name));
            }
        }
        shorten();
    }

    /** Only the last line counts; the others would be read for nothing on every opening. */
    private void shorten() throws IOException {
        Path shorter = file.resolveSibling("seal.new");
        Files.writeString(shorter, line());
        Files.move(shorter, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
    }

    /**
     * Copies the files as they were after the last write that was sealed, though another process be writing on.
     *
     * @throws NotWhole if what was copied is not what was sealed
     */
    void copyTo(Path target) throws IOException {
        for (Map.Entry<String, SealedFile> entry : lastLine().entrySet()) {
            Path copy = target.resolve(entry.getKey());
            Files.createDirectories(copy.getParent());
            Files.copy(folder.resolve(entry.getKey()), copy);
            if (!entry.getValue().isStartOf(copy)) {
                throw new NotWhole("its file " + entry.getKey() + " is not as it was written");
            }
            cut(copy, entry.getValue().length());
        }
    }

    /** Seals the files as they are now. */
    void renew() throws IOException {
        Set<String> names = new HashSet<>(names());
        sealed.keySet().retainAll(names);
        for (String name : names) {
            sealed.computeIfAbsent(name, any -> new SealedFile()).follow(folder.resolve(name));
        }
        add();
    }

    /** Bytes of all files. */
    long length() {
        return sealed.values().stream().mapToLong(SealedFile::length).sum();
    }

    private static void cut(Path file, long length) throws IOException {
        if (Files.size(file) > length) {
            try (RandomAccessFile open = new RandomAccessFile(file.toFile(), "rw")) {
                open.setLength(length);
            }
        }
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile)
                    .map(path -> folder.relativize(path).toString().replace('\\', '/'))
                    .toList();
        }
    }

    private void add() throws IOException {
        Files.writeString(file, line(), StandardOpenOption.CREATE, StandardOpenOption.WRITE, StandardOpenOption.APPEND);
    }

    private String line() {
        List<String> cells = new ArrayList<>();
        sealed.forEach((name, state) -> cells.addAll(List.of(name, Long.toString(state.length()), state.sum())));
        String line = String.join(SEPARATOR, cells);
        return line + SEPARATOR + sum(line) + "\n";
    }

    private Map<String, SealedFile> lastLine() throws IOException {
        if (!Files.exists(file)) {
            throw new NotWhole("it has no seal");
        }
        String text = Files.readString(file, StandardCharsets.ISO_8859_1);
        String last = "";
        for (String line : text.substring(0, text.lastIndexOf('\n') + 1).split("\n")) {
            int end = line.lastIndexOf(SEPARATOR);
            if (end < 0 || !line.substring(end + 1).equals(sum(line.substring(0, end)))) {
                break;
            }
            last = line.substring(0, end);
        }
        return read(last);
    }

    private static Map<String, SealedFile> read(String line) {
        String[] cells = line.split(SEPARATOR);
        if (cells.length < 3) {
            throw new NotWhole("its seal is damaged");
        }
        Map<String, SealedFile> files = new TreeMap<>();
        for (int i = 0; i + 2 < cells.length; i += 3) {
            files.put(cells[i], new SealedFile(Long.parseLong(cells[i + 1]), cells[i + 2]));
        }
        return files;
    }

    private static String sum(String line) {
        CRC32C crc = new CRC32C();
        crc.update(line.getBytes(StandardCharsets.UTF_8));
        return "%08x".formatted((int) crc.getValue());
    }
}
