package pippinry.store.internal.ledger;

import java.io.Closeable;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Path;

/** The file of the ledger that is being written. */
final class SegmentFile implements Closeable {

    private final RandomAccessFile file;
    private final Disk disk;
    private long length;
    private int sum;

    private SegmentFile(RandomAccessFile file, Disk disk, long length, int sum) {
        this.file = file;
        this.disk = disk;
        this.length = length;
        this.sum = sum;
    }

    /** Makes a new file with its first line, both on disk when this returns. */
    static SegmentFile begin(LedgerFolder folder, SegmentHead head, int sumBefore, Disk disk) throws IOException {
        Path path = folder.file(head.segment());
        RandomAccessFile file = disk.open(path);
        SegmentFile segment = new SegmentFile(file, disk, 0, sumBefore);
        try {
            file.setLength(0);
            segment.append(LineWriter.header(head));
            segment.force();
            disk.forceEntries(folder.path());
            return segment;
        } catch (IOException e) {
            file.close();
            throw e;
        }
    }

    /** Goes on after the last good line, which ends there with that sum; what stands behind is cut off. */
    static SegmentFile resume(Path path, long length, int sum, Disk disk) throws IOException {
        RandomAccessFile file = disk.open(path);
        try {
            SegmentFile segment = new SegmentFile(file, disk, length, sum);
            if (file.length() != length) {
                segment.cutTo(length, sum);
            }
            return segment;
        } catch (IOException e) {
            file.close();
            throw e;
        }
    }

    /** Appends a line as {@link LineWriter} makes it, with its sum. It is on disk only after {@link #force}. */
    void append(byte[] body) throws IOException {
        int next = Chain.next(sum, body, 0, body.length);
        byte[] tail = Chain.tail(next);
        byte[] line = new byte[body.length + tail.length + 1];
        System.arraycopy(body, 0, line, 0, body.length);
        System.arraycopy(tail, 0, line, body.length, tail.length);
        line[line.length - 1] = '\n';
        file.seek(length);
        file.write(line);
        length += line.length;
        sum = next;
    }

    void force() throws IOException {
        disk.force(file);
    }

    void cutTo(long end, int sumThere) throws IOException {
        file.setLength(end);
        disk.force(file);
        length = end;
        sum = sumThere;
    }

    long length() {
        return length;
    }

    int sum() {
        return sum;
    }

    @Override
    public void close() throws IOException {
        file.close();
    }
}
