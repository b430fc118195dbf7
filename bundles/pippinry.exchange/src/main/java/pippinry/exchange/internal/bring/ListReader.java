package pippinry.exchange.internal.bring;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pippinry.exchange.internal.bring.OwnList.ListRow;
import pippinry.exchange.internal.tables.FileRefused;
import pippinry.exchange.internal.tables.Refusal;

/**
 * Reads a list as spreadsheets and old programs write them: an xlsx workbook, or text parted by commas, semicolons or tabs, in
 * UTF-8, UTF-16 or Windows-1252. The first row that is not empty is the header.
 */
public final class ListReader {

    private static final int LARGEST = 64 << 20;
    private static final byte[] ZIP = {'P', 'K', 3, 4};
    private static final Charset WINDOWS = Charset.forName("windows-1252");

    private final Path file;

    public ListReader(Path file) {
        this.file = file;
    }

    /** @param sheet name of the sheet in a workbook; the first one if it is empty */
    public OwnList read(Optional<String> sheet) throws FileRefused {
        byte[] bytes = bytes();
        boolean workbook =
                bytes.length > ZIP.length && java.util.Arrays.equals(bytes, 0, ZIP.length, ZIP, 0, ZIP.length);
        return list(workbook ? new WorkbookRows(file, bytes).read(sheet) : textRows(text(bytes)));
    }

    private byte[] bytes() throws FileRefused {
        try {
            if (Files.size(file) > LARGEST) {
                throw refused("it has more than " + (LARGEST >> 20) + " MB; bring it in in parts");
            }
            return Files.readAllBytes(file);
        } catch (NoSuchFileException e) {
            throw refused("there is no such file");
        } catch (IOException e) {
            throw refused("it cannot be read: " + e.getMessage());
        }
    }

    private FileRefused refused(String reason) {
        return new FileRefused(Refusal.ofFile(file, reason));
    }

    private OwnList list(List<ListRow> all) throws FileRefused {
        List<ListRow> rows = all.stream().filter(row -> !row.isEmpty()).toList();
        if (rows.isEmpty()) {
            throw refused("there is nothing in it; a header row and rows below it were expected");
        }
        List<String> header = rows.get(0).cells().stream().map(String::strip).toList();
        int width = rows.stream().mapToInt(row -> row.cells().size()).max().orElse(0);
        return new OwnList(
                file,
                padded(header, width),
                rows.stream()
                        .skip(1)
                        .map(row -> new ListRow(row.line(), padded(row.cells(), width)))
                        .toList());
    }

    private static List<String> padded(List<String> cells, int width) {
        return Stream.concat(cells.stream(), Stream.generate(() -> ""))
                .limit(width)
                .toList();
    }

    private static String text(byte[] bytes) {
        if (starts(bytes, 0xFF, 0xFE)) {
            return new String(bytes, 2, bytes.length - 2, StandardCharsets.UTF_16LE);
        }
        if (starts(bytes, 0xFE, 0xFF)) {
            return new String(bytes, 2, bytes.length - 2, StandardCharsets.UTF_16BE);
        }
        int mark = starts(bytes, 0xEF, 0xBB, 0xBF) ? 3 : 0;
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes, mark, bytes.length - mark))
                    .toString();
        } catch (CharacterCodingException e) {
            return new String(bytes, WINDOWS);
        }
    }

    private static boolean starts(byte[] bytes, int... wanted) {
        for (int i = 0; i < wanted.length; i++) {
            if (bytes.length <= i || (bytes[i] & 0xFF) != wanted[i]) {
                return false;
            }
        }
        return true;
    }

    private List<ListRow> textRows(String text) throws FileRefused {
        List<ListRow> rows = new ArrayList<>();
        try (CsvReader<CsvRecord> records = CsvReader.builder()
                .fieldSeparator(separator(text))
                .skipEmptyLines(false)
                .allowUnclosedQuote(false)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .ofCsvRecord(text)) {
            records.forEach(row -> rows.add(new ListRow(row.getStartingLineNumber(), row.getFields())));
            return rows;
        } catch (CsvParseException e) {
            throw refused("it cannot be read as a table: " + e.getMessage());
        } catch (IOException e) {
            throw refused("it cannot be read: " + e.getMessage());
        }
    }

    /** The sign that parts the first line that is not empty into the most cells. */
    private static char separator(String text) {
        String first = text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
        return Stream.of(',', ';', '\t')
                .max(Comparator.comparingLong(
                        sign -> first.chars().filter(c -> c == sign).count()))
                .orElseThrow();
    }
}
