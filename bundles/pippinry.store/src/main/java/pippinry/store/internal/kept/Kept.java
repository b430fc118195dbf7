package pippinry.store.internal.kept;

import java.util.Arrays;
import java.util.List;
import pippinry.model.Program;
import pippinry.model.Row;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;

/**
 * A program as it was read from a store folder.
 *
 * @param sum of the ledger at its last edit, as it was when the store was written
 */
public record Kept(Program program, int sum) {

    /** Reads all of it into memory. @throws NotWhole if anything is amiss */
    static Kept read(KeptRoot root) {
        if (root.format != KeptRoot.FORMAT) {
            throw new NotWhole("it has format " + root.format + " and not " + KeptRoot.FORMAT);
        }
        if (!root.isWhole()) {
            throw new NotWhole("its sum is wrong");
        }
        if (!Arrays.equals(root.shapes, Shapes.all())) {
            throw new NotWhole("its tables have other columns");
        }
        Program.Restoring program = Program.restoring();
        for (int table = 0; table < root.shapes.length; table++) {
            fill(program, root, table, Kinds.ALL.get(table));
        }
        return new Kept(program.program(root.edit, root.time()), root.sum);
    }

    private static <T extends Record> void fill(Program.Restoring program, KeptRoot root, int table, Kind<T> kind) {
        List<Row<T>> rows = new RowBlocks<>(table, kind).readAll(root.trees[table]);
        if (rows.size() != root.sizes[table]) {
            throw new NotWhole("rows of " + kind.table() + " are missing");
        }
        program.table(kind, rows, root.nextIds[table]);
    }
}
