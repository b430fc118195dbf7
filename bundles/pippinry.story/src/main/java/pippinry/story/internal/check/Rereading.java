package pippinry.story.internal.check;

import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import pippinry.model.Program;
import pippinry.model.Row;
import pippinry.model.record.CellRefused;
import pippinry.model.record.Column;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;

/** Every record, written as a row of its plain table and read again, is the same record. */
final class Rereading implements Check {

    @Override
    public void look(Program program, Consumer<Finding> found) {
        for (Kind<?> kind : Kinds.ALL) {
            lookAt(program, kind, found);
        }
    }

    private static <T extends Record> void lookAt(Program program, Kind<T> kind, Consumer<Finding> found) {
        Map<String, Column> columns =
                kind.columns().stream().collect(Collectors.toMap(Column::name, Function.identity()));
        program.table(kind).forEach(row -> {
            try {
                T read = kind.read(name -> kind.cell(row.value(), columns.get(name)));
                if (!read.equals(row.value())) {
                    found.accept(Finding.fault(
                            kind.table(), key(kind, row), "", "", "written and read again it is another record"));
                }
            } catch (CellRefused e) {
                found.accept(
                        Finding.fault(kind.table(), key(kind, row), e.column(), e.value(), "expected " + e.expected()));
            }
        });
    }

    static <T extends Record> String key(Kind<T> kind, Row<T> row) {
        return kind.keyOf(row.value()).orElse("row " + row.id());
    }
}
