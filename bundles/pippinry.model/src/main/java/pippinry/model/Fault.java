package pippinry.model;

/**
 * Why an edit, or a program as it stands, does not hold together.
 *
 * @param change which change of the edit, from 0; -1 when it is about the program as a whole
 * @param table the plain table it is in
 * @param key the record's key, or its id for a kind without a key
 * @param column the column, empty when it is about the whole record
 * @param value what stands there
 * @param reason what is wrong and what was expected, in words
 */
public record Fault(int change, String table, String key, String column, String value, String reason) {

    @Override
    public String toString() {
        String where = column.isEmpty() ? "" : ", " + column + " '" + value + "'";
        return table + " " + key + where + ": " + reason;
    }
}
