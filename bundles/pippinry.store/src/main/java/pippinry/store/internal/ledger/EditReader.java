package pippinry.store.internal.ledger;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import pippinry.model.Settled;

/** Reads the changes of edits out of a ledger. */
public final class EditReader {

    /** Takes what an edit changed; a large edit comes in several pieces. */
    public interface Taker {
        void take(EditHead edit, List<Settled<?>> changes);
    }

    private final LedgerFolder folder;
    private final LineParser parser = new LineParser();

    public EditReader(LedgerFolder folder) {
        this.folder = folder;
    }

    /** All that the edit changed, in order. */
    public List<Settled<?>> changes(Entry edit) {
        List<Settled<?>> all = new ArrayList<>(edit.head().records());
        read(List.of(edit), (head, changes) -> all.addAll(changes));
        return all;
    }

    /** @param edits one after another as they stand in the ledger */
    public void read(List<Entry> edits, Taker taker) {
        int done = 0;
        while (done < edits.size()) {
            int segment = edits.get(done).segment();
            int end = done;
            while (end < edits.size() && edits.get(end).segment() == segment) {
                end++;
            }
            readSegment(edits.subList(done, end), taker);
            done = end;
        }
    }

    /** Reads the pieces of the edit from the last to the first; within a piece the changes stand in their order. */
    public void readBackwards(Entry edit, Taker taker) {
        Path file = folder.file(edit.segment());
        try {
            List<Long> offsets = offsets(edit, file);
            for (int i = offsets.size() - 1; i >= 0; i--) {
                try (RawLines raw = new RawLines(file, offsets.get(i))) {
                    raw.next();
                    takeLine(edit, read(edit, raw), taker);
                }
            }
        } catch (IOException e) {
            throw Trouble.with("The ledger could not be read", file, e);
        }
    }

    private List<Long> offsets(Entry edit, Path file) throws IOException {
        List<Long> offsets = new ArrayList<>();
        try (RawLines raw = new RawLines(file, edit.offset())) {
            boolean more = true;
            while (more && raw.next()) {
                offsets.add(raw.offset());
                Line line = parser.head(raw.bytes(), raw.from(), raw.to());
                more = line instanceof Line.Begin || line instanceof Line.Part;
            }
        }
        return offsets;
    }

    private void readSegment(List<Entry> edits, Taker taker) {
        Entry first = edits.get(0);
        try (RawLines raw = new RawLines(folder.file(first.segment()), first.offset())) {
            for (Entry edit : edits) {
                readEdit(edit, raw, taker);
            }
        } catch (IOException e) {
            throw Trouble.with("The ledger could not be read", folder.file(first.segment()), e);
        }
    }

    private void readEdit(Entry edit, RawLines raw, Taker taker) throws IOException {
        boolean more = true;
        while (more) {
            if (!raw.next()) {
                throw new IOException("it ends before edit " + edit.head().number());
            }
            more = takeLine(edit, read(edit, raw), taker);
        }
    }

    private Line read(Entry edit, RawLines raw) throws IOException {
        try {
            return parser.whole(raw.bytes(), raw.from(), raw.to());
        } catch (IOException e) {
            throw new IOException("edit " + edit.head().number() + " does not read: " + e.getMessage(), e);
        }
    }

    /** Whether more lines of this edit follow. */
    private static boolean takeLine(Entry edit, Line line, Taker taker) {
        if (line instanceof Line.Whole whole) {
            taker.take(edit.head(), whole.changes());
            return false;
        }
        if (line instanceof Line.Part part) {
            taker.take(edit.head(), part.changes());
        }
        return !(line instanceof Line.Commit);
    }
}
