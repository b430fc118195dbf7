package pippinry.exchange.internal.tables;

import java.nio.file.Path;

/**
 * Why a row, or a whole file, is not taken in.
 *
 * @param line physical line, the header is 1; 0 when it is about the file as a whole
 * @param column empty when it is about the whole row
 * @param value as it stands in the file
 * @param reason what is wrong or what was expected, in words
 */
public record Refusal(Path file, long line, String column, String value, String reason) {

    private static final int SHOWN = 60;

    public static Refusal ofFile(Path file, String reason) {
        return new Refusal(file, 0, "", "", reason);
    }

    public static Refusal ofRow(Path file, long line, String reason) {
        return new Refusal(file, line, "", "", reason);
    }

    /** The same without file and line, for a column beside the row. */
    public String inRow() {
        String where = column.isEmpty() ? "" : "column " + column + ": ";
        return where + (value.isEmpty() && column.isEmpty() ? "" : "'" + shortened(value) + "'; ") + reason;
    }

    @Override
    public String toString() {
        return file + (line == 0 ? "" : " line " + line) + (column.isEmpty() ? ": " : ", ") + inRow();
    }

    private static String shortened(String text) {
        String oneLine = text.replace("\r", "\\r").replace("\n", "\\n");
        return oneLine.length() <= SHOWN ? oneLine : oneLine.substring(0, SHOWN) + "...";
    }
}
