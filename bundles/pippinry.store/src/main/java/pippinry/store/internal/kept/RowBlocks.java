package pippinry.store.internal.kept;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import pippinry.model.Row;
import pippinry.model.Table;
import pippinry.model.record.CellRefused;
import pippinry.model.record.Column;
import pippinry.model.record.Kind;
import pippinry.model.record.RowReader;

/** Writes and reads blocks of rows with neighbouring ids, each cell as its text. */
final class RowBlocks<T extends Record> {

    /** So few that an edit of one row writes little, so many that a table is not all tree. */
    static final int ROWS = 32;

    private final int table;
    private final Kind<T> kind;
    private final RowReader<T> reader;

    /** @param table the place of the kind in {@code Kinds.ALL}; written into each block, so that none is taken for another */
    RowBlocks(int table, Kind<T> kind) {
        this.table = table;
        this.kind = kind;
        this.reader = new RowReader<>(kind);
    }

    static int blockOf(int id) {
        return id / ROWS;
    }

    /** Null if no row is left in the block. */
    byte[] write(Table<T> rows, int block) {
        BlockWriter out = new BlockWriter().number(table).number(block);
        boolean any = false;
        for (int i = 0; i < ROWS; i++) {
            Optional<T> row = rows.get(block * ROWS + i);
            if (row.isPresent()) {
                any = true;
                write(out.number(i), row.get());
            }
        }
        return any ? out.number(ROWS).done() : null;
    }

    private void write(BlockWriter out, T row) {
        for (Column column : kind.columns()) {
            out.text(kind.cell(row, column));
        }
    }

    List<Row<T>> readAll(Object[] tree) {
        List<Row<T>> rows = new ArrayList<>();
        BlockTree.forEach(tree, (bytes, block) -> read(bytes, block, rows));
        return rows;
    }

    private void read(byte[] bytes, int block, Collection<Row<T>> rows) {
        BlockReader in = new BlockReader(bytes);
        if (in.number() != table || in.number() != block) {
            throw new NotWhole("a block stands in the wrong place");
        }
        for (int i = in.number(); i < ROWS; i = in.number()) {
            rows.add(new Row<>(block * ROWS + i, read(in)));
        }
    }

    private T read(BlockReader in) {
        reader.begin();
        for (int column = 0; column < kind.columns().size(); column++) {
            reader.set(column, in.text());
        }
        try {
            return reader.read();
        } catch (CellRefused e) {
            throw new NotWhole("a row does not fit: " + e.getMessage());
        }
    }
}
