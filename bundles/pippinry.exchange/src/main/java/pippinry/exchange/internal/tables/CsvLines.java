package pippinry.exchange.internal.tables;

import de.siegmar.fastcsv.reader.CloseableIterator;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.CsvRecordHandler;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The rows of a CSV file as RFC 4180 has them (Shafranovich, Y. 2005. Common Format and MIME Type for CSV Files), in UTF-8,
 * with or without a byte order mark. Empty lines are passed over.
 */
final class CsvLines implements AutoCloseable {

    private static final int MOST_COLUMNS = 20_000;
    private static final int LONGEST_CELL = 1 << 20;
    private static final Pattern STARTING_LINE = Pattern.compile("starting at line (\\d+)");

    /** @param number the physical line on which the row starts */
    record Line(long number, List<String> cells) {}

    private final Path file;
    private final TextFile text;
    private final CloseableIterator<CsvRecord> records;
    private long last;

    private CsvLines(Path file, TextFile text) {
        this.file = file;
        this.text = text;
        this.records = CsvReader.builder()
                .skipEmptyLines(false)
                .allowUnclosedQuote(false)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .maxBufferSize(2 * LONGEST_CELL)
                .build(
                        CsvRecordHandler.of(handler -> handler.maxFields(MOST_COLUMNS)
                                .maxFieldSize(LONGEST_CELL)
                                .maxRecordSize(16 * LONGEST_CELL)),
                        text.reader())
                .iterator();
    }

    static CsvLines open(Path file) throws FileRefused {
        return new CsvLines(file, TextFile.open(file));
    }

    /** The next row that is not empty; empty at the end of the file. */
    Optional<Line> next() throws FileRefused {
        try {
            while (records.hasNext()) {
                CsvRecord record = records.next();
                last = record.getStartingLineNumber();
                if (!isBlank(record)) {
                    return Optional.of(new Line(last, record.getFields()));
                }
            }
            return Optional.empty();
        } catch (CsvParseException | UncheckedIOException e) {
            throw refused(e);
        }
    }

    /** A spreadsheet leaves rows of nothing but commas below a table. */
    private static boolean isBlank(CsvRecord record) {
        for (int i = 0; i < record.getFieldCount(); i++) {
            if (!record.getField(i).isEmpty()) {
                return false;
            }
        }
        return true;
    }

    /** Bytes read so far, of those that the file has. */
    long passed() {
        return text.passed();
    }

    private FileRefused refused(RuntimeException e) {
        if (text.fault().isPresent()) {
            return TextFile.refused(file, text.fault().get());
        }
        String message = String.valueOf(e.getMessage());
        Matcher start = STARTING_LINE.matcher(message);
        long line = start.find() ? Long.parseLong(start.group(1)) : last + 1;
        return new FileRefused(Refusal.ofRow(file, line, "the row that starts here cannot be read: " + said(message)));
    }

    private static String said(String message) {
        if (message.startsWith("Unclosed")) {
            return "a quotation mark is opened and never closed";
        }
        if (message.startsWith("Unexpected")) {
            return "something follows the closing quotation mark (inside a quoted cell a quotation mark is written twice)";
        }
        return message.contains("max")
                ? "it has more than " + MOST_COLUMNS + " columns, or a cell with more than " + LONGEST_CELL
                        + " letters (is a quotation mark not closed?)"
                : message;
    }

    @Override
    public void close() throws FileRefused {
        try {
            records.close();
        } catch (IOException e) {
            throw TextFile.refused(file, e);
        }
    }
}
