package pippinry.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What was entered in one sitting: rows by table, dated on the day they were typed. */
final class Edit {

    private final LocalDate date;
    private final String author;
    private final String slug;
    private final String reason;
    private final Map<Table, List<Row>> rows = new EnumMap<>(Table.class);
    private final Map<String, Integer> positions = new HashMap<>();

    Edit(LocalDate date, String author, String slug, String reason) {
        this.date = date;
        this.author = author;
        this.slug = slug;
        this.reason = reason;
    }

    /** Adds a row; one of the same key that was entered in the same sitting gives way to it. */
    void put(Row row) {
        List<Row> table = rows.computeIfAbsent(row.table(), any -> new ArrayList<>());
        Integer known =
                row.table().key().isEmpty() ? null : positions.putIfAbsent(row.table() + " " + row.key(), table.size());
        if (known == null) {
            table.add(row);
        } else {
            table.set(known, row);
        }
    }

    Map<Table, List<Row>> rows() {
        return rows;
    }

    LocalDate date() {
        return date;
    }

    String author() {
        return author;
    }

    String slug() {
        return slug;
    }

    String reason() {
        return reason;
    }
}
