package pippinry.store.internal.ledger;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A second copy of the ledger in the program folder. Only what is new is copied, then read back and its sums checked.
 * One thread at a time.
 */
public final class Backup {

    private static final int PIECE = 1 << 16;

    private final LedgerFolder from;
    private final LedgerFolder to;
    private final Disk disk;
    private final SetAside setAside;
    private int segment = 1;
    private long checked;
    private int sum = Chain.START;

    public Backup(Path program, Disk disk, SetAside setAside) {
        this.from = LedgerFolder.of(program);
        this.to = LedgerFolder.backupOf(program);
        this.disk = disk;
        this.setAside = setAside;
    }

    /** Copies all edits up to this end that are not in the backup yet. */
    public void bringUp(LedgerEnd end) throws IOException {
        Files.createDirectories(to.path());
        while (segment < end.segment()) {
            bringUp(from.length(segment), end);
            segment++;
            checked = 0;
            sum = end.sumsBefore().get(segment - 1);
        }
        bringUp(end.length(), end);
        disk.forceEntries(to.path());
    }

    /** A file of the right length was checked when it was copied. */
    private void bringUp(long length, LedgerEnd end) throws IOException {
        if (to.length(segment) == length) {
            return;
        }
        if (to.length(segment) > length) {
            setAside.move(to.file(segment));
            checked = 0;
        }
        copy(length);
        if (!check(length)) {
            setAside.move(to.file(segment));
            startOver(end);
            copy(length);
            if (!check(length)) {
                throw new IOException("the copy of " + from.file(segment) + " does not read as the original does");
            }
        }
    }

    private void startOver(LedgerEnd end) {
        checked = 0;
        sum = end.sumsBefore().get(segment - 1);
    }

    private void copy(long length) throws IOException {
        try (RandomAccessFile in = new RandomAccessFile(from.file(segment).toFile(), "r");
                RandomAccessFile out = disk.open(to.file(segment))) {
            long at = out.length();
            in.seek(at);
            out.seek(at);
            byte[] piece = new byte[PIECE];
            while (at < length) {
                int some = (int) Math.min(piece.length, length - at);
                in.readFully(piece, 0, some);
                out.write(piece, 0, some);
                at += some;
            }
            disk.force(out);
        }
    }

    private boolean check(long length) throws IOException {
        try (RawLines raw = new RawLines(to.file(segment), checked)) {
            while (raw.end() < length && raw.next()) {
                if (!raw.whole() || !Chain.holds(sum, raw.bytes(), raw.from(), raw.to())) {
                    return false;
                }
                sum = (int) Chain.stated(raw.bytes(), raw.from(), raw.to());
            }
            checked = raw.end();
        }
        return checked == length;
    }
}
