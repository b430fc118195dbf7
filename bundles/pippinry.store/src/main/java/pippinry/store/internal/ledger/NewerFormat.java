package pippinry.store.internal.ledger;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Path;
import pippinry.model.StoreFailed;

/**
 * Refuses a ledger that a newer version wrote, before anything in its folder is touched. Whatever the format, the first
 * line of a file is written and summed as it is here; so a format that a flipped bit made new is known for damage.
 */
public final class NewerFormat {

    private NewerFormat() {}

    /** @throws StoreFailed if any file of the ledger says that it has a newer format */
    public static void check(LedgerFolder folder) throws IOException {
        int sum = Chain.START;
        for (int segment : folder.segments()) {
            try (RawLines raw = new RawLines(folder.file(segment), 0)) {
                if (raw.next()) {
                    check(folder.file(segment), raw, sum);
                }
            }
            sum = lastSum(folder.file(segment));
        }
    }

    /** What the file's last line says its sum is; any number if that is no line. */
    private static int lastSum(Path path) throws IOException {
        try (RandomAccessFile file = new RandomAccessFile(path.toFile(), "r")) {
            byte[] end = new byte[(int) Math.min(file.length(), Chain.TAIL + 1L)];
            file.seek(file.length() - end.length);
            file.readFully(end);
            return end.length <= Chain.TAIL ? Chain.START : (int) Chain.stated(end, 0, Chain.TAIL);
        }
    }

    /** @param sum at the end of the file before */
    static void check(Path file, RawLines first, int sum) {
        Line line;
        try {
            line = new LineParser().head(first.bytes(), first.from(), first.to());
        } catch (IOException e) {
            return;
        }
        if (line instanceof Line.Header header
                && header.head().format() > SegmentHead.FORMAT
                && Chain.holds(sum, first.bytes(), first.from(), first.to())) {
            throw new StoreFailed("This program was written by a newer version of Pippinry (" + file + " has format "
                    + header.head().format() + ", this version reads up to " + SegmentHead.FORMAT
                    + "). Nothing was changed. Open it with that version or a newer one.");
        }
    }
}
