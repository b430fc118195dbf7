package pippinry.exchange.internal.tables;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pippinry.model.Program;
import pippinry.model.Row;
import pippinry.model.Table;
import pippinry.model.record.Column;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;

/**
 * Writes a program as plain tables: RFC 4180, UTF-8, a table for each kind that has records, rows in the order of their
 * keys or else of entry. The same program gives the same bytes.
 */
public final class TableExport {

    private final Program program;
    private final boolean forSpreadsheet;

    /** @param forSpreadsheet whether words that a spreadsheet would take for a formula get an apostrophe before them */
    public TableExport(Program program, boolean forSpreadsheet) {
        this.program = program;
        this.forSpreadsheet = forSpreadsheet;
    }

    /** The tables that have rows, in the order of the model. */
    public List<Kind<?>> filled() {
        return Kinds.ALL.stream().filter(kind -> program.table(kind).size() > 0).toList();
    }

    public static String fileName(Kind<?> kind) {
        return kind.table() + ".csv";
    }

    public <T extends Record> void write(Kind<T> kind, Path file) throws IOException {
        List<String> header = kind.columns().stream().map(Column::name).toList();
        write(file, header, () -> ordered(program.table(kind)).stream()
                .map(row -> cells(kind, row.value()))
                .iterator());
    }

    /** Writes any table in the same form. */
    public static void write(Path file, List<String> header, Iterable<List<String>> rows) throws IOException {
        try (CsvWriter csv =
                CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(file, StandardCharsets.UTF_8)) {
            csv.writeRecord(header);
            rows.forEach(csv::writeRecord);
        }
    }

    private static <T extends Record> List<Row<T>> ordered(Table<T> table) {
        List<Row<T>> rows = table.rows();
        if (!table.kind().key().isEmpty()) {
            rows.sort(
                    Comparator.comparing(row -> table.kind().keyOf(row.value()).orElseThrow()));
        }
        return rows;
    }

    private <T extends Record> List<String> cells(Kind<T> kind, T row) {
        List<String> cells = new ArrayList<>(kind.columns().size());
        for (Column column : kind.columns()) {
            String text = kind.cell(row, column);
            cells.add(forSpreadsheet ? SpreadsheetGuard.guarded(text) : text);
        }
        return cells;
    }
}
