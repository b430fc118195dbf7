package pippinry.store.internal.ledger;

import java.io.IOException;
import java.time.Instant;

/** Files of ledgers that this version would not write. */
public final class Ledgers {

    private Ledgers() {}

    /** A file whose first line has this format, rightly summed, and whose second only that format can read. */
    public static byte[] ofFormat(int format) throws IOException {
        byte[] head = LineWriter.header(new SegmentHead(format, 1, "larkmoor", Instant.EPOCH));
        byte[] tail = Chain.tail(Chain.next(Chain.START, head, 0, head.length));
        byte[] next = "\nsomething else\n".getBytes(java.nio.charset.StandardCharsets.UTF_8);
        byte[] file = new byte[head.length + tail.length + next.length];
        System.arraycopy(head, 0, file, 0, head.length);
        System.arraycopy(tail, 0, file, head.length, tail.length);
        System.arraycopy(next, 0, file, head.length + tail.length, next.length);
        return file;
    }
}
