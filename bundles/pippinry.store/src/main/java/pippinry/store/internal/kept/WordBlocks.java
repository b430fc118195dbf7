package pippinry.store.internal.kept;

import java.util.ArrayList;
import java.util.List;
import pippinry.model.page.Words;

/** Writes and reads the words of a table in blocks of some hundred. */
final class WordBlocks {

    static final int WORDS = 256;

    private final int table;

    /** @param table the place of the kind in {@code Kinds.ALL}; written into each block, so that none is taken for another */
    WordBlocks(int table) {
        this.table = table;
    }

    static int blockOf(int word) {
        return word / WORDS;
    }

    byte[] write(Words words, int block) {
        int end = Math.min(words.size(), (block + 1) * WORDS);
        BlockWriter out = new BlockWriter().number(table).number(block).number(end - block * WORDS);
        for (int word = block * WORDS; word < end; word++) {
            out.text(words.text(word));
        }
        return out.done();
    }

    /** All words in the order of their numbers. */
    List<String> readAll(Object[] tree) {
        List<String> words = new ArrayList<>();
        BlockTree.forEach(tree, (bytes, block) -> read(bytes, block, words));
        return words;
    }

    private void read(byte[] bytes, int block, List<String> words) {
        BlockReader in = new BlockReader(bytes);
        if (in.number() != table || in.number() != block || words.size() != block * WORDS) {
            throw new NotWhole("a block of words stands in the wrong place");
        }
        for (int left = in.number(); left > 0; left--) {
            words.add(in.text());
        }
    }
}
