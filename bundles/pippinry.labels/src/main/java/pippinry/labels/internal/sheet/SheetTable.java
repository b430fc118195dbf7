package pippinry.labels.internal.sheet;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads sheets from a table with the columns {@code sheet_id, page_w_mm, page_h_mm, cols, rows, label_w_mm, label_h_mm,
 * left_margin_mm, top_margin_mm, pitch_x_mm, pitch_y_mm, basis}; others are passed over.
 */
public final class SheetTable {
    private final String file;

    private SheetTable(String file) {
        this.file = file;
    }

    /** All rows, or {@link IllegalArgumentException} naming file, line, column, value and what was expected. */
    public static List<SheetFormat> read(Reader table, String file) {
        SheetTable reading = new SheetTable(file);
        List<SheetFormat> formats = new ArrayList<>();
        try {
            for (NamedCsvRecord row : CsvReader.builder().ofNamedCsvRecord(table)) {
                formats.add(reading.format(row));
            }
        } catch (CsvParseException e) {
            throw new IllegalArgumentException(file + ": " + e.getMessage(), e);
        }
        return formats;
    }

    private SheetFormat format(NamedCsvRecord row) {
        try {
            return new SheetFormat(
                    text(row, "sheet_id"),
                    number(row, "page_w_mm"),
                    number(row, "page_h_mm"),
                    count(row, "cols"),
                    count(row, "rows"),
                    number(row, "label_w_mm"),
                    number(row, "label_h_mm"),
                    number(row, "left_margin_mm"),
                    number(row, "top_margin_mm"),
                    number(row, "pitch_x_mm"),
                    number(row, "pitch_y_mm"),
                    row.findField("basis").orElse(""));
        } catch (BadField e) {
            throw e;
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(place(row) + ": " + e.getMessage(), e);
        }
    }

    private String text(NamedCsvRecord row, String column) {
        return row.findField(column)
                .filter(text -> !text.isBlank())
                .orElseThrow(() -> new BadField(place(row) + ", column " + column + ": missing, expected a name"));
    }

    private double number(NamedCsvRecord row, String column) {
        String text = row.findField(column).orElse("");
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException e) {
            throw new BadField(place(row) + ", column " + column + ": '" + text + "', expected millimetres like 63.5");
        }
    }

    private int count(NamedCsvRecord row, String column) {
        String text = row.findField(column).orElse("");
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException e) {
            throw new BadField(place(row) + ", column " + column + ": '" + text + "', expected a whole number");
        }
    }

    private String place(NamedCsvRecord row) {
        return file + ", line " + row.getStartingLineNumber();
    }

    private static final class BadField extends IllegalArgumentException {
        private static final long serialVersionUID = 1;

        BadField(String message) {
            super(message);
        }
    }
}
