package pippinry.model;

import java.util.Arrays;
import java.util.List;
import pippinry.model.page.Packed;
import pippinry.model.page.Page;
import pippinry.model.page.Words;
import pippinry.model.trie.IntTrie;

/** Lists for each word the rows that cite it, by counting first and filling afterwards. */
final class CitingLists {

    private final PageCells<?> cells;
    private final List<Page> pages;
    private final int[] counts;
    private final int[][] lists;

    private CitingLists(PageCells<?> cells, Words words, List<Page> pages) {
        this.cells = cells;
        this.pages = pages;
        this.counts = new int[words.size()];
        this.lists = new int[words.size()][];
    }

    /** Ids ascend in every list. */
    static IntTrie<int[]> of(PageCells<?> cells, Words words, List<Page> pages) {
        CitingLists citing = new CitingLists(cells, words, pages);
        citing.each((word, id) -> citing.counts[word]++);
        citing.each(citing::add);
        return IntTrie.of(Arrays.asList(citing.lists));
    }

    private interface Cited {
        void by(int word, int id);
    }

    private void add(int word, int id) {
        if (lists[word] == null) {
            lists[word] = new int[counts[word]];
            counts[word] = 0;
        }
        lists[word][counts[word]++] = id;
    }

    private void each(Cited cited) {
        for (int number = 0; number < pages.size(); number++) {
            Page page = pages.get(number);
            for (int place = 0; page != null && place < page.extent(); place++) {
                if (page.has(place)) {
                    row(page, place, number * Page.ROWS + place, cited);
                }
            }
        }
    }

    /** A row that cites a code in two columns is listed once. */
    private void row(Page page, int place, int id, Cited cited) {
        int[] columns = cells.citing();
        for (int i = 0; i < columns.length; i++) {
            long packed = page.cell(columns[i], place);
            boolean again = false;
            for (int j = 0; j < i; j++) {
                again |= page.cell(columns[j], place) == packed;
            }
            if (Packed.isWord(packed) && !again) {
                cited.by(Packed.wordNumber(packed), id);
            }
        }
    }
}
