package pippinry.labels.internal.sheet;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * Reads sheets from rows with the columns {@code sheet_id, page_w_mm, page_h_mm, cols, rows, label_w_mm, label_h_mm,
 * left_margin_mm, top_margin_mm, pitch_x_mm, pitch_y_mm, basis}; others are passed over.
 */
public final class SheetTable {
    private final String place;
    private final UnaryOperator<String> cells;

    private SheetTable(String place, UnaryOperator<String> cells) {
        this.place = place;
        this.cells = cells;
    }

    /** All rows of a table that ships with the program. */
    static List<SheetFormat> read(Reader table, String file) {
        List<SheetFormat> formats = new ArrayList<>();
        for (NamedCsvRecord row : CsvReader.builder().ofNamedCsvRecord(table)) {
            String place = file + " line " + row.getStartingLineNumber();
            formats.add(row(place, column -> row.findField(column).orElse("")));
        }
        return formats;
    }

    /**
     * The sheet of one row.
     *
     * @param place file and line, for messages
     * @param cells the text of a column, empty when there is none
     * @throws IllegalArgumentException naming place, column, value and what was expected
     */
    public static SheetFormat row(String place, UnaryOperator<String> cells) {
        return new SheetTable(place, cells).format();
    }

    private SheetFormat format() {
        String name = cell("sheet_id", "a name", text -> text);
        double pageWidth = mm("page_w_mm");
        double pageHeight = mm("page_h_mm");
        int columns = count("cols");
        int rows = count("rows");
        double labelWidth = mm("label_w_mm");
        double labelHeight = mm("label_h_mm");
        double left = mm("left_margin_mm");
        double top = mm("top_margin_mm");
        double pitchX = mm("pitch_x_mm");
        double pitchY = mm("pitch_y_mm");
        String basis = cells.apply("basis");
        try {
            return new SheetFormat(
                    name,
                    pageWidth,
                    pageHeight,
                    columns,
                    rows,
                    labelWidth,
                    labelHeight,
                    left,
                    top,
                    pitchX,
                    pitchY,
                    basis);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(place + ": " + e.getMessage(), e);
        }
    }

    private double mm(String column) {
        return cell(column, "millimetres such as 63.5", Double::parseDouble);
    }

    private int count(String column) {
        return cell(column, "a whole number", Integer::parseInt);
    }

    private <V> V cell(String column, String expected, Function<String, V> read) {
        String text = cells.apply(column);
        try {
            if (!text.isBlank()) {
                return read.apply(text);
            }
        } catch (NumberFormatException e) {
            // told below
        }
        throw new IllegalArgumentException(place + ", column " + column + ": '" + text + "'; expected " + expected);
    }
}
