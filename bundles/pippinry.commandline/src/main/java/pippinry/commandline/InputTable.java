package pippinry.commandline;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;

/**
 * A table of a person's own that a reckoning command reads: UTF-8 (a byte order mark is skipped), RFC 4180, header row first,
 * columns in any order, those not asked for ignored, empty lines skipped. Read from front to back, once.
 */
public final class InputTable implements AutoCloseable {

    private static final char BYTE_ORDER_MARK = '\ufeff';
    private static final int SHOWN = 40;

    private final Path file;
    private final CsvReader<CsvRecord> reader;
    private final Iterator<CsvRecord> records;
    private final Map<String, Integer> places = new HashMap<>();
    private final List<String> header;
    private long line;

    private InputTable(Path file) throws IOException, CallRefused {
        this.file = file;
        this.reader = CsvReader.builder()
                .skipEmptyLines(true)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .allowUnclosedQuote(false)
                .ofCsvRecord(text(file));
        this.records = reader.iterator();
        this.header = header();
    }

    /**
     * Opens a table and reads its header.
     *
     * @throws CallRefused if there is no such file, it is not such a table, or one of these columns is missing
     */
    public static InputTable open(Path file, String... needed) throws CallRefused {
        try {
            InputTable table = new InputTable(file);
            table.require(needed);
            return table;
        } catch (NoSuchFileException missing) {
            throw new CallRefused(file + ": there is no such file");
        } catch (CharacterCodingException otherEncoding) {
            throw notUtf8(file);
        } catch (IOException unreadable) {
            throw new CallRefused(file + ": cannot be read (" + unreadable.getMessage() + ")");
        }
    }

    private static Reader text(Path file) throws IOException {
        if (Files.isDirectory(file)) {
            throw new IOException("it is a folder");
        }
        Reader reader = new BufferedReader(new InputStreamReader(Files.newInputStream(file), strict()));
        reader.mark(1);
        if (reader.read() != BYTE_ORDER_MARK) {
            reader.reset();
        }
        return reader;
    }

    private static CharsetDecoder strict() {
        return StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
    }

    private List<String> header() throws CallRefused {
        if (!hasNext()) {
            throw new CallRefused(file + " line 1: the file is empty; expected a header row");
        }
        List<String> names = new ArrayList<>();
        for (String field : records.next().getFields()) {
            String name = field.strip();
            if (!name.isEmpty() && places.putIfAbsent(name, names.size()) != null) {
                throw new CallRefused(
                        "%s line 1, column %s: the header names it twice; expected once".formatted(file, name));
            }
            names.add(name);
        }
        return names;
    }

    private void require(String... columns) throws CallRefused {
        for (String column : columns) {
            if (!has(column)) {
                close();
                throw new CallRefused(
                        "%s line 1, column %s: missing; the header is '%s'; expected columns parted by commas"
                                .formatted(file, column, String.join(",", header)));
            }
        }
    }

    /** The file's path as it was given. */
    public Path file() {
        return file;
    }

    /** Column names as they stand in the header. */
    public List<String> columns() {
        return List.copyOf(header);
    }

    public boolean has(String column) {
        return places.containsKey(column);
    }

    /** Place of a column, negative when there is none. */
    int place(String column) {
        return places.getOrDefault(column, -1);
    }

    /**
     * Whether another row follows.
     *
     * @throws CallRefused if what follows cannot be read
     */
    public boolean hasNext() throws CallRefused {
        try {
            return records.hasNext();
        } catch (CsvParseException | UncheckedIOException broken) {
            throw complaint(broken);
        }
    }

    /** The next row. */
    public InputRow next() throws CallRefused {
        CsvRecord record = records.next();
        line = record.getStartingLineNumber();
        if (record.getFieldCount() != header.size()) {
            throw new CallRefused("%s line %d: %d fields; expected %d as in the header"
                    .formatted(file, line, record.getFieldCount(), header.size()));
        }
        return new InputRow(this, line, record.getFields().toArray(String[]::new));
    }

    private CallRefused complaint(RuntimeException broken) {
        Throwable cause = broken;
        while (cause != null && !(cause instanceof CharacterCodingException)) {
            cause = cause.getCause();
        }
        return cause == null
                ? new CallRefused("%s after line %d: a quoted field is not closed, or text follows its closing quote"
                        .formatted(file, line))
                : notUtf8(file);
    }

    /** Looks for the place again, since the reader was far ahead when it stumbled. */
    private static CallRefused notUtf8(Path file) {
        try {
            ByteBuffer bytes = ByteBuffer.wrap(Files.readAllBytes(file));
            CharBuffer text = CharBuffer.allocate(bytes.remaining() + 1);
            strict().decode(bytes, text, true);
            String before = text.flip().toString();
            int lineStart = before.lastIndexOf('\n') + 1;
            long number = 1 + before.chars().filter(c -> c == '\n').count();
            String tail = before.substring(Math.max(lineStart, before.length() - SHOWN));
            return new CallRefused("%s line %d, after '%s': byte 0x%02X is not UTF-8; expected the table saved as UTF-8"
                    .formatted(file, number, tail, bytes.get(bytes.position()) & 0xff));
        } catch (IOException gone) {
            return new CallRefused(file + ": cannot be read (" + gone.getMessage() + ")");
        }
    }

    @Override
    public void close() {
        try {
            reader.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
