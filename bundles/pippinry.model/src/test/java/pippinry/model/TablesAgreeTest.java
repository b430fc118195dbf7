package pippinry.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import pippinry.model.page.Page;
import pippinry.model.page.Words;
import pippinry.model.record.CellRefused;
import pippinry.model.record.Column;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;
import pippinry.model.record.RowReader;

/** The packed table is the plain one in every answer, after thousands of random edits, restored from its pages or not. */
class TablesAgreeTest {

    private static final int EDITS = 240;
    private static final String[] NUMBERS = {"", "0", "7", "-3.25", "1.50", "12345.6", "0.001", "-0.5"};
    private static final String[] TEXTS = {"", "ns", "2", "much", "Größe", "2016-05-14", "007", "1.", "1e3", "🍎"};
    private static final String[] DATES = {
        "", "2016", "2016-05", "2016-02-29", "about 2014", "2016-05-14T09:30", "1899-12-31", "0001-01-01"
    };

    private final Random random = new Random(7);

    @Test
    void scores() throws CellRefused {
        compare(Kinds.SCORES, this::score);
    }

    @Test
    void weather() throws CellRefused {
        compare(Kinds.WEATHER, this::hour);
    }

    private interface Filling {
        String cell(Column column, int id);
    }

    private <T extends Record> void compare(Kind<T> kind, Filling filling) throws CellRefused {
        Table<T> plain = RecordTable.empty(kind);
        ColumnTable<T> packed = ColumnTable.empty(kind);
        RowReader<T> reader = new RowReader<>(kind);
        for (int edit = 0; edit < EDITS; edit++) {
            List<Integer> ids = plain.rows().stream().map(Row::id).toList();
            TreeSet<Integer> changed = new TreeSet<>();
            IntStream.range(0, random.nextInt(8))
                    .filter(any -> !ids.isEmpty())
                    .forEach(any -> changed.add(ids.get(random.nextInt(ids.size()))));
            List<Integer> removed = changed.stream().filter(id -> id % 2 == 0).toList();
            List<Row<T>> put = new ArrayList<>();
            for (int id : changed) {
                if (id % 2 != 0) {
                    put.add(new Row<>(id, row(kind, reader, filling, id)));
                }
            }
            int nextId = plain.nextId() + random.nextInt(12);
            for (int id = plain.nextId(); id < nextId; id++) {
                put.add(new Row<>(id, row(kind, reader, filling, id)));
            }
            plain = plain.with(put, removed, nextId);
            packed = packed.with(put, removed, nextId);
            if (edit % 80 == 79) {
                assertAlike(plain, packed);
                packed = restored(packed);
            }
        }
        assertAlike(plain, packed);
        assertAlike(plain, restored(packed));
    }

    private static <T extends Record> T row(Kind<T> kind, RowReader<T> reader, Filling filling, int id)
            throws CellRefused {
        reader.begin();
        kind.columns().forEach(column -> reader.set(column.name(), filling.cell(column, id)));
        return reader.read();
    }

    private String score(Column column, int id) {
        return switch (column.name()) {
            case "subject" -> random.nextInt(4) == 0 ? "12" : "26-014-%03d".formatted(random.nextInt(40));
            case "sample" -> random.nextInt(3) == 0 ? "26-014-%03d".formatted(random.nextInt(40)) : "";
            case "trait" -> "trait " + random.nextInt(5);
            case "value" -> pick(NUMBERS) + "1";
            case "date" -> pick(DATES);
            default -> pick(TEXTS);
        };
    }

    /** The key follows from the id, so that no two rows have one; every third is no time of ours. */
    private String hour(Column column, int id) {
        return switch (column.name()) {
            case "time" ->
                id % 3 == 0
                        ? "about %04d".formatted(1000 + id)
                        : "2026-%02d-%02dT%02d:00".formatted(1 + id / 672, 1 + id / 24 % 28, id % 24);
            case "temp_c" -> pick(new String[] {"", "-3.25", "0", "21.5"});
            default -> pick(new String[] {"", "0", "0.5", "60"});
        };
    }

    private String pick(String[] cells) {
        return cells[random.nextInt(cells.length)];
    }

    private static <T extends Record> ColumnTable<T> restored(ColumnTable<T> table) {
        int columns = table.kind().columns().size();
        List<Page> pages = IntStream.range(0, table.nextId() / Page.ROWS + 1)
                .mapToObj(number -> table.page(number)
                        .map(page -> Page.of(table.kind().table(), number, columns, page.bytes()))
                        .orElse(null))
                .toList();
        List<String> words = IntStream.range(0, table.words().size())
                .mapToObj(table.words()::text)
                .toList();
        return ColumnTable.of(table.kind(), Words.of(words), pages, table.nextId());
    }

    private static <T extends Record> void assertAlike(Table<T> plain, Table<T> packed) {
        assertEquals(plain.size(), packed.size());
        assertEquals(plain.nextId(), packed.nextId());
        assertEquals(plain.rows(), packed.rows());
        assertEquals(plain.stream().toList(), packed.stream().toList());
        for (int id = -1; id <= plain.nextId() + Page.ROWS; id++) {
            assertEquals(plain.get(id), packed.get(id));
        }
        Kind<T> kind = plain.kind();
        TreeSet<String> cited = new TreeSet<>(List.of("", "12", "nobody", "2016-05-14"));
        for (Row<T> row : plain.rows()) {
            Optional<String> key = kind.keyOf(row.value());
            assertEquals(key.flatMap(plain::find), key.flatMap(packed::find));
            kind.columns().forEach(column -> cited.addAll(kind.cited(row.value(), column)));
        }
        cited.forEach(code -> assertEquals(plain.citing(code), packed.citing(code)));
        assertEquals(plain.find("2031-01-01T00:00"), packed.find("2031-01-01T00:00"));
    }
}
