package pippinry.store.internal.ledger;

/** A text that no file in UTF-8 can hold: it has half of a character that takes two. */
public final class NotWritable extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final String table;
    private final String key;
    private final String column;
    private final String text;

    NotWritable(String table, String key, String column, String text) {
        super("half of a character, which no file can hold; type the text again");
        this.table = table;
        this.key = key;
        this.column = column;
        this.text = text;
    }

    public String table() {
        return table;
    }

    public String key() {
        return key;
    }

    public String column() {
        return column;
    }

    public String text() {
        return text;
    }
}
