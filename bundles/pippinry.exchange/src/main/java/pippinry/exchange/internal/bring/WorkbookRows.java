package pippinry.exchange.internal.bring;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.ExcelReaderException;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import pippinry.exchange.internal.bring.OwnList.ListRow;
import pippinry.exchange.internal.tables.FileRefused;
import pippinry.exchange.internal.tables.Refusal;

/** Rows of one sheet of an xlsx workbook; a formula counts with the value that it had when the book was saved. */
final class WorkbookRows {

    private static final int MINUTES_A_DAY = 24 * 60;
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mm");

    private final Path file;
    private final byte[] bytes;
    private LocalDate firstDay;

    WorkbookRows(Path file, byte[] bytes) {
        this.file = file;
        this.bytes = bytes;
    }

    List<ListRow> read(Optional<String> wanted) throws FileRefused {
        try (ReadableWorkbook book =
                new ReadableWorkbook(new ByteArrayInputStream(bytes), new ReadingOptions(true, true))) {
            firstDay = countsFrom1904() ? LocalDate.of(1904, 1, 1) : LocalDate.of(1899, 12, 30);
            Sheet sheet = sheet(book, wanted);
            try (Stream<Row> rows = sheet.openStream()) {
                return rows.map(this::row).toList();
            }
        } catch (IOException | ExcelReaderException | IllegalArgumentException e) {
            throw new FileRefused(Refusal.ofFile(file, "this workbook cannot be read: " + e.getMessage()));
        }
    }

    /** The library knows {@code true} and not the {@code 1} that is as good by ECMA-376. */
    private boolean countsFrom1904() throws IOException {
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
            for (ZipEntry part = zip.getNextEntry(); part != null; part = zip.getNextEntry()) {
                if (part.getName().equals("xl/workbook.xml")) {
                    String text = new String(zip.readAllBytes(), StandardCharsets.UTF_8);
                    return text.contains("date1904=\"1\"") || text.contains("date1904=\"true\"");
                }
            }
        }
        return false;
    }

    private Sheet sheet(ReadableWorkbook book, Optional<String> wanted) throws FileRefused {
        if (wanted.isEmpty()) {
            return book.getFirstSheet();
        }
        Optional<Sheet> sheet = book.findSheet(wanted.get());
        if (sheet.isEmpty()) {
            String names = book.getSheets().map(Sheet::getName).collect(Collectors.joining(", "));
            throw new FileRefused(
                    Refusal.ofFile(file, "it has no sheet '" + wanted.get() + "'; its sheets are: " + names));
        }
        return sheet.get();
    }

    private ListRow row(Row row) {
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < row.getCellCount(); i++) {
            cells.add(row.getOptionalCell(i).map(this::text).orElse(""));
        }
        return new ListRow(row.getRowNum(), cells);
    }

    private String text(Cell cell) {
        return switch (cell.getType()) {
            case NUMBER, FORMULA -> number(cell);
            case ERROR -> "";
            default -> cell.getText();
        };
    }

    private String number(Cell cell) {
        String raw = Optional.ofNullable(cell.getRawValue()).orElse("");
        try {
            BigDecimal number = new BigDecimal(raw);
            return isDay(cell) ? day(number) : plain(number);
        } catch (NumberFormatException e) {
            return raw;
        }
    }

    /** A day is a number like others; only the cell's format tells. Words in quotation marks and colours are no format. */
    private static boolean isDay(Cell cell) {
        String format = Optional.ofNullable(cell.getDataFormatString()).orElse("");
        String bare = format.replaceAll("\"[^\"]*\"|\\[[^\\]]*\\]|\\\\.", "").toLowerCase(java.util.Locale.ROOT);
        return bare.contains("d") || bare.contains("y");
    }

    /** The whole part counts days, the rest is the part of the day that has passed, to the minute. */
    private String day(BigDecimal number) {
        LocalDate day = firstDay.plusDays(number.longValue());
        double rest = number.subtract(new BigDecimal(number.longValue())).doubleValue();
        long minutes = Math.round(rest * MINUTES_A_DAY);
        return minutes == 0 ? day.toString() : MINUTE.format(day.atStartOfDay().plusMinutes(minutes));
    }

    /** Spreadsheets keep 12.3 as 12.300000000000001. */
    private static String plain(BigDecimal number) {
        BigDecimal rounded = number.round(new java.math.MathContext(15)).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }
}
