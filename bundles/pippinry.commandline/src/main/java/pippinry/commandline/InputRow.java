package pippinry.commandline;

import java.util.Optional;

/** One row of a table of a person's own. */
public final class InputRow {

    private final InputTable table;
    private final long line;
    private final String[] fields;

    InputRow(InputTable table, long line, String[] fields) {
        this.table = table;
        this.line = line;
        this.fields = fields;
    }

    /** Where it begins in its file; the header is line 1. */
    public long line() {
        return line;
    }

    /** What stands in a column, without blanks around it; empty also when the table has no such column. */
    public String text(String column) {
        int place = table.place(column);
        return place < 0 ? "" : fields[place].strip();
    }

    /** What stands in a column that must not be empty. */
    public String needed(String column) throws CallRefused {
        String text = text(column);
        if (text.isEmpty()) {
            throw refused(column, "something; it must not be empty");
        }
        return text;
    }

    /** A number with a decimal point; empty when nothing stands there. */
    public Optional<Double> number(String column) throws CallRefused {
        String text = text(column);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            double number = Double.parseDouble(text);
            if (Double.isFinite(number) && !Character.isLetter(text.charAt(text.length() - 1))) {
                return Optional.of(number);
            }
        } catch (NumberFormatException notANumber) {
            // told below
        }
        throw refused(column, "a number such as 12.5");
    }

    /** A complaint about what stands in a column of this row. */
    public CallRefused refused(String column, String expected) {
        return new CallRefused("%s line %d, column %s: '%s'; expected %s"
                .formatted(table.file(), line, column, text(column), expected));
    }

    /** A complaint about this row as a whole. */
    public CallRefused refused(String complaint) {
        return new CallRefused("%s line %d: %s".formatted(table.file(), line, complaint));
    }
}
