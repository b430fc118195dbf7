package pippinry.demo;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** One line of a table: cells by column name, empty where nothing is known. */
final class Row {

    private final Table table;
    private final Map<String, String> cells = new LinkedHashMap<>();

    Row(Table table) {
        this.table = table;
    }

    /** Sets a cell; numbers are written plainly, null is not known. */
    Row with(String column, Object value) {
        if (!table.columns().contains(column)) {
            throw new IllegalArgumentException(table + " has no column " + column);
        }
        cells.put(column, text(value));
        return this;
    }

    String get(String column) {
        return cells.getOrDefault(column, "");
    }

    int number(String column) {
        return Integer.parseInt(get(column));
    }

    String key() {
        return table.key().stream().map(this::get).collect(Collectors.joining("/"));
    }

    List<String> line() {
        return table.columns().stream().map(this::get).toList();
    }

    Table table() {
        return table;
    }

    Row copy() {
        Row copy = new Row(table);
        copy.cells.putAll(cells);
        return copy;
    }

    private static String text(Object value) {
        if (value == null) {
            return "";
        }
        return value instanceof Double number ? plain(number) : value.toString();
    }

    /** At most two decimals, no superfluous zeros. */
    static String plain(double number) {
        BigDecimal rounded = BigDecimal.valueOf(number).setScale(2, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
