package pippinry.model;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import pippinry.model.page.Page;
import pippinry.model.trie.IntTrie;

/**
 * Finds the row that has a packed key: a persistent hash table of 65,536 short lists. At two million keys a list has
 * about thirty, so a change still costs a few hundred bytes.
 */
final class KeyIndex {

    private static final int LISTS = 1 << 16;
    private static final long[] NONE = {};
    private static final KeyIndex EMPTY = new KeyIndex(IntTrie.empty());

    /** Keys and ids by turns. */
    private final IntTrie<long[]> lists;

    private KeyIndex(IntTrie<long[]> lists) {
        this.lists = lists;
    }

    static KeyIndex empty() {
        return EMPTY;
    }

    static KeyIndex of(PageCells<?> cells, List<Page> pages, int size) {
        if (cells.key().isEmpty() || size == 0) {
            return EMPTY;
        }
        int key = cells.key().getAsInt();
        long[][] lists = new long[LISTS][];
        for (int number = 0; number < pages.size(); number++) {
            Page page = pages.get(number);
            for (int place = 0; page != null && place < page.extent(); place++) {
                if (page.has(place)) {
                    long packed = page.cell(key, place);
                    int list = list(packed);
                    lists[list] = added(lists[list] == null ? NONE : lists[list], packed, number * Page.ROWS + place);
                }
            }
        }
        return new KeyIndex(IntTrie.of(Arrays.asList(lists)));
    }

    OptionalInt get(long key) {
        long[] list = lists.get(list(key)).orElse(NONE);
        for (int i = 0; i < list.length; i += 2) {
            if (list[i] == key) {
                return OptionalInt.of((int) list[i + 1]);
            }
        }
        return OptionalInt.empty();
    }

    KeyIndex with(long key, int id) {
        KeyIndex without = without(key);
        int list = list(key);
        return new KeyIndex(
                without.lists.with(list, added(without.lists.get(list).orElse(NONE), key, id)));
    }

    KeyIndex without(long key) {
        if (get(key).isEmpty()) {
            return this;
        }
        int list = list(key);
        long[] old = lists.get(list).orElseThrow();
        long[] left = new long[old.length - 2];
        int at = 0;
        for (int i = 0; i < old.length; i += 2) {
            if (old[i] != key) {
                left[at++] = old[i];
                left[at++] = old[i + 1];
            }
        }
        return new KeyIndex(left.length == 0 ? lists.without(list) : lists.with(list, left));
    }

    private static long[] added(long[] list, long key, int id) {
        long[] more = Arrays.copyOf(list, list.length + 2);
        more[list.length] = key;
        more[list.length + 1] = id;
        return more;
    }

    /** Neighbouring minutes go to neighbouring lists, which keeps the tree's nodes full. */
    private static int list(long key) {
        return (int) (key >>> 3 ^ key >>> 19 ^ key >>> 35) & LISTS - 1;
    }
}
