package pippinry.exchange.internal.tables;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import pippinry.model.record.Column;
import pippinry.model.record.Kind;

/** A file's header row beside the columns of its table: where each column stands, and what else there is. */
final class Heading {

    /** Columns that {@link RefusedRows} adds; they are passed over when a mended file comes in again. */
    static final List<String> OURS = List.of("refused_line", "refused_because");

    private final int width;
    private final Map<String, Integer> places = new HashMap<>();
    private final Map<String, Integer> others = new HashMap<>();
    private final List<Integer> nameless = new ArrayList<>();

    private Heading(int width) {
        this.width = width;
    }

    static Heading read(Path file, Kind<?> kind, CsvLines.Line header) throws FileRefused {
        Heading heading = new Heading(header.cells().size());
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < heading.width; i++) {
            String name = header.cells().get(i).strip();
            if (!name.isEmpty() && !seen.add(name.toLowerCase(Locale.ROOT))) {
                throw new FileRefused(
                        new Refusal(file, header.number(), name, name, "two columns have this name; rename one"));
            }
            heading.place(kind, name, i);
        }
        heading.checkNeeded(file, kind, header);
        return heading;
    }

    private void place(Kind<?> kind, String name, int index) {
        String small = name.toLowerCase(Locale.ROOT);
        if (name.isEmpty()) {
            nameless.add(index);
        } else if (kind.column(small).isPresent()) {
            places.put(small, index);
        } else if (!OURS.contains(small)) {
            others.put(name, index);
        }
    }

    private void checkNeeded(Path file, Kind<?> kind, CsvLines.Line header) throws FileRefused {
        for (Column column : kind.columns()) {
            if (column.needed() && !places.containsKey(column.name())) {
                String row = String.join(",", header.cells());
                throw new FileRefused(new Refusal(
                        file, header.number(), column.name(), row, "the header lacks this column; " + hint(kind, row)));
            }
        }
    }

    private static String hint(Kind<?> kind, String row) {
        if (row.indexOf(';') >= 0 || row.indexOf('\t') >= 0) {
            return "columns are parted by commas";
        }
        return kind.table() + " has: "
                + kind.columns().stream().map(Column::name).collect(Collectors.joining(", "));
    }

    boolean has(Column column) {
        return places.containsKey(column.name());
    }

    /** The cell of a column that the file has. */
    String cell(List<String> cells, Column column) {
        return cells.get(places.get(column.name()));
    }

    /** How many cells a row has. */
    int width() {
        return width;
    }

    /** Columns that the table does not have, by their name, with their place in the row. */
    Map<String, Integer> others() {
        return others;
    }

    /** Places in the row above which no name stands. */
    List<Integer> nameless() {
        return nameless;
    }
}
