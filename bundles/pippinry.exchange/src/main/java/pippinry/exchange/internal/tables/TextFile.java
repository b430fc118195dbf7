package pippinry.exchange.internal.tables;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PushbackInputStream;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

/** A file of text in UTF-8, with or without a byte order mark. */
public final class TextFile implements AutoCloseable {

    private static final byte[] BYTE_ORDER_MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

    private final Utf8Stream bytes;
    private final Reader reader;

    private TextFile(Utf8Stream bytes) {
        this.bytes = bytes;
        this.reader = new InputStreamReader(bytes, StandardCharsets.UTF_8);
    }

    public static TextFile open(Path file) throws FileRefused {
        if (Files.isDirectory(file)) {
            throw new FileRefused(Refusal.ofFile(file, "it is a folder; name the files in it"));
        }
        try {
            PushbackInputStream in = new PushbackInputStream(Files.newInputStream(file), BYTE_ORDER_MARK.length);
            byte[] start = in.readNBytes(BYTE_ORDER_MARK.length);
            boolean marked = Arrays.equals(start, BYTE_ORDER_MARK);
            if (!marked) {
                in.unread(start);
            }
            return new TextFile(new Utf8Stream(in, marked ? start.length : 0));
        } catch (IOException e) {
            throw refused(file, e);
        }
    }

    /** What to say when the file cannot be read. */
    public static FileRefused refused(Path file, IOException e) {
        if (e instanceof WrongBytes wrong) {
            return new FileRefused(Refusal.ofRow(file, wrong.line(), wrong.getMessage()));
        }
        return new FileRefused(Refusal.ofFile(
                file,
                e instanceof NoSuchFileException ? "there is no such file" : "it cannot be read: " + e.getMessage()));
    }

    Reader reader() {
        return reader;
    }

    public BufferedReader lines() {
        return new BufferedReader(reader);
    }

    /** Bytes read so far. */
    public long passed() {
        return bytes.passed();
    }

    /** Why the bytes are no text, if that was found. */
    Optional<WrongBytes> fault() {
        return bytes.fault();
    }

    @Override
    public void close() throws IOException {
        reader.close();
    }
}
