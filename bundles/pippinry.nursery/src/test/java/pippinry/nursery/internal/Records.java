package pippinry.nursery.internal;

import java.time.Instant;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pippinry.model.Edit;
import pippinry.model.EditRefused;
import pippinry.model.Program;
import pippinry.model.record.CellRefused;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;

/** A small program written as plain tables: {@code table: columns}, then a row to a line, cells parted by commas. */
final class Records {

    private Records() {}

    static Program of(String tables) {
        Edit.Draft edit = Edit.by("IN", "test");
        Kind<?> kind = null;
        List<String> columns = List.of();
        for (String line : tables.lines().map(String::strip).toList()) {
            if (line.contains(": ")
                    && Kinds.named(line.substring(0, line.indexOf(':'))).isPresent()) {
                kind = Kinds.named(line.substring(0, line.indexOf(':'))).orElseThrow();
                columns = List.of(line.substring(line.indexOf(':') + 2).split(","));
            } else if (!line.isEmpty()) {
                put(edit, kind, columns, line);
            }
        }
        try {
            return Program.empty().apply(edit.done(), Instant.EPOCH).program();
        } catch (EditRefused e) {
            throw new IllegalArgumentException(e);
        }
    }

    private static <T extends Record> void put(Edit.Draft edit, Kind<T> kind, List<String> columns, String line) {
        List<String> cells = Arrays.asList(line.split(",", -1));
        Map<String, String> row = new HashMap<>();
        for (int i = 0; i < columns.size(); i++) {
            row.put(columns.get(i), cells.get(i));
        }
        try {
            edit.put(kind, kind.read(column -> row.getOrDefault(column, "")));
        } catch (CellRefused e) {
            throw new IllegalArgumentException(line, e);
        }
    }
}
