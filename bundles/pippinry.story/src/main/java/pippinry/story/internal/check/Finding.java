package pippinry.story.internal.check;

import pippinry.model.Fault;

/**
 * Something found in a program.
 *
 * @param fault whether it cannot be; otherwise it is worth a look
 * @param column empty when it is about the whole record
 * @param reason in words
 */
public record Finding(boolean fault, String table, String key, String column, String value, String reason) {

    static Finding fault(String table, String key, String column, Object value, String reason) {
        return new Finding(true, table, key, column, String.valueOf(value), reason);
    }

    static Finding question(String table, String key, String column, Object value, String reason) {
        return new Finding(false, table, key, column, String.valueOf(value), reason);
    }

    static Finding of(Fault fault) {
        return new Finding(true, fault.table(), fault.key(), fault.column(), fault.value(), fault.reason());
    }

    @Override
    public String toString() {
        String where = column.isEmpty() ? "" : ", " + column + " '" + value + "'";
        return table + " " + key + where + ": " + reason;
    }
}
