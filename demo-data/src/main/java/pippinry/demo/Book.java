package pippinry.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The records as they grow, sitting by sitting. Of the first eight years only notebooks were kept; they are typed in
 * later, in few sittings, with the dates as well as they can be read.
 */
final class Book {

    static final int FIRST_YEAR_KEPT_HERE = 2019;

    private final List<Edit> edits = new ArrayList<>();
    private final Map<String, Row> onFile = new HashMap<>();
    private Edit open;
    private boolean fromNotebooks;

    /** Starts typing in notebooks: until {@link #closeNotebooks} everything belongs to this sitting. */
    void openNotebook(LocalDate typed, String author, String slug, String reason) {
        begin(typed, author, slug, reason);
        fromNotebooks = true;
    }

    void closeNotebooks() {
        fromNotebooks = false;
    }

    /** A new sitting; while notebooks are typed in, work of their years joins the notebook's sitting. */
    void sitting(LocalDate date, String author, String slug, String reason) {
        if (!fromNotebooks) {
            begin(date, author, slug, reason);
        }
    }

    private void begin(LocalDate date, String author, String slug, String reason) {
        if (open != null && date.isBefore(open.date())) {
            throw new IllegalStateException(date + " is before the last sitting, " + open.date());
        }
        open = new Edit(date, author, slug, reason);
        edits.add(open);
    }

    boolean fromNotebooks() {
        return fromNotebooks;
    }

    Row row(Table table) {
        return new Row(table);
    }

    void add(Row row) {
        if (!row.table().key().isEmpty()) {
            Row before = onFile.put(row.table() + " " + row.key(), row);
            if (before != null) {
                throw new IllegalStateException(row.table() + " " + row.key() + " is on file already");
            }
        }
        open.put(row);
    }

    /** Writes the whole row again with some cells changed. */
    void change(Table table, String key, Object... columnsAndValues) {
        Row changed = find(table, key)
                .orElseThrow(() -> new IllegalStateException("no " + table + " " + key))
                .copy();
        for (int i = 0; i < columnsAndValues.length; i += 2) {
            changed.with((String) columnsAndValues[i], columnsAndValues[i + 1]);
        }
        onFile.put(table + " " + key, changed);
        open.put(changed);
    }

    Optional<Row> find(Table table, String key) {
        return Optional.ofNullable(onFile.get(table + " " + key));
    }

    /** The day as it stands in the records: whole since the program is kept here, often less in the notebooks. */
    String day(LocalDate date, Object... subject) {
        if (!fromNotebooks || date.getYear() >= FIRST_YEAR_KEPT_HERE) {
            return date.toString();
        }
        double legible = Dice.of("notebook", date, List.of(subject)).between(0, 1);
        String year = Integer.toString(date.getYear());
        String month = date.toString().substring(0, 7);
        if (date.getYear() <= 2012) {
            return legible < 0.45 ? month : legible < 0.85 ? year : "about " + year;
        }
        if (date.getYear() <= 2015) {
            return legible < 0.55 ? month : legible < 0.9 ? date.toString() : year;
        }
        return legible < 0.8 ? date.toString() : month;
    }

    List<Edit> edits() {
        return edits;
    }
}
