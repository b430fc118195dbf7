package pippinry.store.internal.kept;

import java.util.BitSet;
import pippinry.model.PagedTable;
import pippinry.model.Program;
import pippinry.model.Table;
import pippinry.model.page.Page;
import pippinry.model.page.Words;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;

/** Brings a root up to a program: new blocks for what was touched, and new paths to them. */
final class RootWriting {

    private final KeptRoot root;
    private final Program program;

    RootWriting(KeptRoot root, Program program) {
        this.root = root;
        this.program = program;
    }

    /** @param sum of the ledger at the program's last edit */
    void write(Touched touched, int sum) {
        root.renewArrays();
        for (int place = 0; place < Kinds.ALL.size(); place++) {
            if (!touched.blocks(place).isEmpty()) {
                writeTable(place, Kinds.ALL.get(place), touched.blocks(place));
            }
        }
        root.edit = program.edit();
        root.sum = sum;
        root.seconds = program.time().getEpochSecond();
        root.nanos = program.time().getNano();
        root.seal();
    }

    private <T extends Record> void writeTable(int place, Kind<T> kind, BitSet blocks) {
        Table<T> table = program.table(kind);
        if (table instanceof PagedTable<T> paged) {
            writeBlocks(
                    place, blocks, number -> paged.page(number).map(Page::bytes).orElse(null));
            writeWords(place, paged.words());
        } else {
            RowBlocks<T> rows = new RowBlocks<>(place, kind);
            writeBlocks(place, blocks, number -> rows.write(table, number));
        }
        root.nextIds[place] = table.nextId();
        root.sizes[place] = table.size();
    }

    private void writeBlocks(int place, BitSet blocks, BlockSource source) {
        root.trees[place] = BlockTree.with(root.trees[place], blocks, source);
    }

    /** Words are only ever added, so the last block that is there grows and others follow. */
    private void writeWords(int place, Words words) {
        BitSet blocks = new BitSet();
        blocks.set(WordBlocks.blockOf(root.wordCounts[place]), WordBlocks.blockOf(words.size() + WordBlocks.WORDS - 1));
        WordBlocks writer = new WordBlocks(place);
        root.wordTrees[place] = BlockTree.with(root.wordTrees[place], blocks, number -> writer.write(words, number));
        root.wordCounts[place] = words.size();
    }
}
