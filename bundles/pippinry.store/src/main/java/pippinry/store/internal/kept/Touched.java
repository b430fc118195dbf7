package pippinry.store.internal.kept;

import java.util.BitSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pippinry.model.PagedTable;
import pippinry.model.Program;
import pippinry.model.Settled;
import pippinry.model.Table;
import pippinry.model.page.Page;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;

/** Which blocks of which tables may differ from what was written last; tables by their place in {@code Kinds.ALL}. */
public final class Touched {

    private static final Map<Kind<?>, Integer> PLACES = new IdentityHashMap<>();

    static {
        IntStream.range(0, Kinds.ALL.size()).forEach(place -> PLACES.put(Kinds.ALL.get(place), place));
    }

    private final List<BitSet> blocks =
            Stream.generate(BitSet::new).limit(Kinds.ALL.size()).toList();

    /** Every block that the program has or had. */
    public static Touched all(Program program) {
        Touched all = new Touched();
        for (int place = 0; place < Kinds.ALL.size(); place++) {
            Table<?> table = program.table(Kinds.ALL.get(place));
            all.blocks.get(place).set(0, blockOf(table, table.nextId()) + 1);
        }
        return all;
    }

    /** @param program any version of it; only the sort of its tables counts */
    public void add(Program program, List<Settled<?>> changes) {
        for (Settled<?> change : changes) {
            int block = blockOf(program.table(change.kind()), change.id());
            blocks.get(PLACES.get(change.kind())).set(block);
        }
    }

    BitSet blocks(int place) {
        return blocks.get(place);
    }

    private static int blockOf(Table<?> table, int id) {
        return table instanceof PagedTable ? id / Page.ROWS : RowBlocks.blockOf(id);
    }
}
