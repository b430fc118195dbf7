package pippinry.store.internal.ledger;

import java.io.Closeable;
import java.io.FileInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Arrays;

/** The lines of a file as bytes, one at a time; the buffer grows to the longest line and no further. */
final class RawLines implements Closeable {

    private static final int FIRST_SIZE = 1 << 16;

    private final InputStream in;
    private byte[] bytes = new byte[FIRST_SIZE];
    private long offset;
    private int from;
    private int to;
    private int filled;
    private boolean whole;
    private int number;

    /** @param from where the first line begins */
    // FileInputStream, not a channel: an interrupted thread would close a channel under its other users.
    RawLines(Path file, long from) throws IOException {
        FileInputStream stream = new FileInputStream(file.toFile());
        stream.skipNBytes(from);
        this.in = stream;
        this.offset = from;
    }

    /** Goes to the next line; false if there is none. */
    boolean next() throws IOException {
        int begin = number == 0 ? 0 : to + (whole ? 1 : 0);
        offset += begin - from;
        from = begin;
        to = from;
        whole = false;
        while (!findBreak()) {
            if (!fill()) {
                to = filled;
                break;
            }
        }
        number++;
        return to > from || whole;
    }

    private boolean findBreak() {
        int at = to;
        while (at < filled && bytes[at] != '\n') {
            at++;
        }
        to = at;
        whole = at < filled;
        return whole;
    }

    private boolean fill() throws IOException {
        if (from > 0) {
            System.arraycopy(bytes, from, bytes, 0, filled - from);
            to -= from;
            filled -= from;
            from = 0;
        }
        if (filled == bytes.length) {
            bytes = Arrays.copyOf(bytes, bytes.length * 2);
        }
        int read = in.read(bytes, filled, bytes.length - filled);
        filled += Math.max(read, 0);
        return read > 0;
    }

    /** Holds the line from {@link #from} to {@link #to}, until {@link #next} is called. */
    byte[] bytes() {
        return bytes;
    }

    int from() {
        return from;
    }

    /** After the line's last byte; the break is not part of it. */
    int to() {
        return to;
    }

    /** Of the line's first byte in the file. */
    long offset() {
        return offset;
    }

    /** Of the byte after the line's break. */
    long end() {
        return offset + (to - from) + (whole ? 1 : 0);
    }

    /** Whether a line break ends it. */
    boolean whole() {
        return whole;
    }

    /** Of the line, from 1 where reading began. */
    int number() {
        return number;
    }

    boolean startsWith(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (from + i >= to || bytes[from + i] != text.charAt(i)) {
                return false;
            }
        }
        return true;
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
