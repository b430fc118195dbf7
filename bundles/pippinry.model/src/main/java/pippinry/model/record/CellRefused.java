package pippinry.model.record;

/** A cell of a plain table cannot be read. */
public final class CellRefused extends Exception {

    private static final long serialVersionUID = 1;

    private final String column;
    private final String value;
    private final String expected;

    public CellRefused(String column, String value, String expected) {
        super("column " + column + ": '" + value + "' where " + expected + " is expected");
        this.column = column;
        this.value = value;
        this.expected = expected;
    }

    public String column() {
        return column;
    }

    public String value() {
        return value;
    }

    /** What would be accepted, in words. */
    public String expected() {
        return expected;
    }
}
