package pippinry.model.record;

/** Thrown by a record's constructor when a value does not fit; the message says what was expected. */
public final class Unfit extends IllegalArgumentException {

    private static final long serialVersionUID = 1;

    private final String column;
    private final String value;

    public Unfit(String column, Object value, String expected) {
        super(expected);
        this.column = column;
        this.value = String.valueOf(value);
    }

    public String column() {
        return column;
    }

    public String value() {
        return value;
    }
}
