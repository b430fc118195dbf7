package pippinry.store.internal.ledger;

import java.io.IOException;
import java.nio.file.Path;
import pippinry.model.StoreFailed;

/** Refuses a ledger that a newer version wrote, before anything in its folder is touched. */
public final class NewerFormat {

    private NewerFormat() {}

    /** @throws StoreFailed if any file of the ledger says that it has a newer format */
    public static void check(LedgerFolder folder) throws IOException {
        for (int segment : folder.segments()) {
            try (RawLines raw = new RawLines(folder.file(segment), 0)) {
                if (raw.next()) {
                    check(folder.file(segment), raw);
                }
            }
        }
    }

    /** A first line that cannot be read says nothing about its format; its sum will tell. */
    static void check(Path file, RawLines first) {
        Line line;
        try {
            line = new LineParser().head(first.bytes(), first.from(), first.to());
        } catch (IOException e) {
            return;
        }
        if (line instanceof Line.Header header && header.head().format() > SegmentHead.FORMAT) {
            throw new StoreFailed("This program was written by a newer version of Pippinry (" + file + " has format "
                    + header.head().format() + ", this version reads up to " + SegmentHead.FORMAT
                    + "). Nothing was changed. Open it with that version or a newer one.");
        }
    }
}
