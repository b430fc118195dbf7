package pippinry.exchange.internal.tables;

import java.util.regex.Pattern;

/**
 * Keeps a spreadsheet from taking words for a formula and carrying it out (common practice, no source): an apostrophe goes
 * before a cell that begins with {@code = + - @}, a tab or a line's end, unless the cell is a number.
 */
final class SpreadsheetGuard {

    private static final String STARTS_FORMULA = "=+-@\t\r\n";
    private static final Pattern NUMBER = Pattern.compile("[-+]?\\d+(\\.\\d+)?");

    private SpreadsheetGuard() {}

    static String guarded(String cell) {
        boolean risky = !cell.isEmpty() && STARTS_FORMULA.indexOf(cell.charAt(0)) >= 0;
        return risky && !NUMBER.matcher(cell).matches() ? "'" + cell : cell;
    }
}
