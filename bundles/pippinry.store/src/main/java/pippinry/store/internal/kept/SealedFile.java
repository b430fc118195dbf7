package pippinry.store.internal.kept;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.zip.CRC32C;

/** A file of the storage engine up to some length, and the sum of its bytes (CRC-32C). */
final class SealedFile {

    private static final int PIECE = 1 << 16;

    /** Files to which the engine only ever adds: their sum goes on from where it was. */
    private static final Set<String> GROWING = Set.of("dat", "sft");

    private CRC32C crc = new CRC32C();
    private long length;
    private String sum;

    SealedFile() {
        this(0, "");
    }

    SealedFile(long length, String sum) {
        this.length = length;
        this.sum = sum;
    }

    long length() {
        return length;
    }

    String sum() {
        return sum;
    }

    /** Whether the file begins with what was sealed. */
    boolean isStartOf(Path file) throws IOException {
        return Files.exists(file) && Files.size(file) >= length && read(file, 0, length) && sum.equals(text());
    }

    /** Takes the file as it is now. */
    void follow(Path file) throws IOException {
        long now = Files.size(file);
        boolean grows = now >= length && GROWING.contains(ending(file));
        long from = grows ? length : 0;
        if (!grows) {
            crc = new CRC32C();
        }
        if (!read(file, from, now)) {
            throw new IOException(file + " was cut short while it was read");
        }
        length = now;
        sum = text();
    }

    private static String ending(Path file) {
        String name = file.getFileName().toString();
        return name.substring(name.lastIndexOf('.') + 1);
    }

    private String text() {
        return "%08x".formatted((int) crc.getValue());
    }

    /** False if the file ends before. */
    private boolean read(Path file, long from, long to) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            in.skipNBytes(from);
            byte[] piece = new byte[PIECE];
            for (long left = to - from; left > 0; ) {
                int some = in.read(piece, 0, (int) Math.min(piece.length, left));
                if (some < 0) {
                    return false;
                }
                crc.update(piece, 0, some);
                left -= some;
            }
        }
        return true;
    }
}
