package pippinry.store.internal.ledger;

import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.UUID;
import pippinry.model.Settled;
import pippinry.model.StoreFailed;

/**
 * The ledger of a program, open to be added to. One thread at a time.
 *
 * <p>An edit of up to a thousand records is one line. A larger one is {@code begin}, parts of at most a thousand records,
 * {@code commit}; the parts are forced to disk before the commit is written, so a commit never stands behind parts that
 * were lost.
 */
public final class Ledger implements Edits, AutoCloseable {

    /** A file that has grown to this is closed and never changes again; 32 MB. */
    static final long FULL = 32L << 20;

    private static final int PART = 1_000;

    private final LedgerFolder folder;
    private final String program;
    private final Disk disk;
    private final List<Entry> edits;
    private final List<Integer> sumsBefore;
    private final long full;
    private int segment;
    private SegmentFile file;
    private boolean doubtful;

    /** Goes on with a ledger that has no flaw. */
    Ledger(LedgerFolder folder, LedgerScan scan, Disk disk, long full) throws IOException {
        this.folder = folder;
        this.program = scan.program().orElseThrow();
        this.disk = disk;
        this.edits = Collections.synchronizedList(new ArrayList<>(scan.edits()));
        this.sumsBefore = new ArrayList<>(scan.sumsBefore());
        this.full = full;
        this.segment = scan.last();
        this.file = SegmentFile.resume(folder.file(segment), scan.goodLength(), scan.goodSum(), disk);
    }

    /** Makes the first file of a new ledger. */
    static void begin(LedgerFolder folder, Instant time, Disk disk) throws IOException {
        String program = UUID.randomUUID().toString();
        SegmentHead head = new SegmentHead(SegmentHead.FORMAT, 1, program, time);
        SegmentFile.begin(folder, head, Chain.START, disk).close();
    }

    @Override
    public LedgerFolder folder() {
        return folder;
    }

    @Override
    public long last() {
        return edits.size();
    }

    @Override
    public Entry edit(long number) {
        return edits.get(Math.toIntExact(number - 1));
    }

    @Override
    public List<Entry> edits(long from, long to) {
        synchronized (edits) {
            return from > to ? List.of() : List.copyOf(edits.subList((int) from - 1, (int) to));
        }
    }

    /** Where the next edit will begin. */
    public synchronized LedgerEnd end() {
        return new LedgerEnd(segment, file.length(), List.copyOf(sumsBefore));
    }

    /**
     * Writes the edit down; it is on disk when this returns.
     *
     * @throws StoreFailed if it was not written; nothing of it is then in the ledger
     * @throws NotWritable if it holds half of a character; nothing of it is then in the ledger
     */
    public synchronized Entry append(EditHead head, List<Settled<?>> changes) {
        if (doubtful || head.number() != edits.size() + 1L) {
            throw new StoreFailed("An earlier write to the ledger failed and it is not certain what reached the disk ("
                    + folder.path()
                    + "). Close the program and open it again: what is on disk is then read and checked.");
        }
        beginNextIfFull(head.time());
        long start = file.length();
        int sumBefore = file.sum();
        // Cleared only when it is known what the disk holds; so it stays when memory runs out half way, too.
        doubtful = true;
        try {
            write(head, changes);
        } catch (IOException | RuntimeException e) {
            cutBack(start, sumBefore, e);
            throw e instanceof NotWritable text ? text : failed(head, e);
        }
        Entry entry = new Entry(head, segment, start, file.sum());
        edits.add(entry);
        doubtful = false;
        return entry;
    }

    private StoreFailed failed(EditHead head, Exception cause) {
        return Trouble.with("Edit " + head.number() + " was not written", folder.file(segment), cause);
    }

    private void cutBack(long start, int sumBefore, Exception cause) {
        try {
            file.cutTo(start, sumBefore);
            doubtful = cause instanceof NotForced;
        } catch (IOException e) {
            cause.addSuppressed(e);
        }
    }

    private void write(EditHead head, List<Settled<?>> changes) throws IOException {
        if (changes.size() <= PART) {
            file.append(LineWriter.edit(head, changes));
        } else {
            writeParts(head, changes);
        }
        force();
    }

    private void writeParts(EditHead head, List<Settled<?>> changes) throws IOException {
        file.append(LineWriter.begin(head));
        int parts = 0;
        for (int from = 0; from < changes.size(); from += PART) {
            List<Settled<?>> some = changes.subList(from, Math.min(from + PART, changes.size()));
            file.append(LineWriter.part(head.number(), ++parts, some));
        }
        force();
        file.append(LineWriter.commit(head.number(), parts));
    }

    private void force() throws NotForced {
        try {
            file.force();
        } catch (IOException e) {
            throw new NotForced(e);
        }
    }

    /** After this nobody knows what the disk holds: the system may have dropped the pages and forgotten it. */
    private static final class NotForced extends IOException {

        private static final long serialVersionUID = 1;

        NotForced(IOException cause) {
            super(cause.getMessage(), cause);
        }
    }

    private void beginNextIfFull(Instant time) {
        if (file.length() < full) {
            return;
        }
        SegmentHead head = new SegmentHead(SegmentHead.FORMAT, segment + 1, program, time);
        try {
            SegmentFile next = SegmentFile.begin(folder, head, file.sum(), disk);
            sumsBefore.add(file.sum());
            file.close();
            file = next;
            segment++;
        } catch (IOException e) {
            throw Trouble.with("The next file of the ledger was not begun", folder.file(segment + 1), e);
        }
    }

    @Override
    public synchronized void close() {
        try {
            file.close();
        } catch (IOException e) {
            throw Trouble.with("The ledger was not closed", folder.path(), e);
        }
    }
}
