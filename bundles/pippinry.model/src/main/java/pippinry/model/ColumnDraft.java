package pippinry.model;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import pippinry.model.page.Packed;
import pippinry.model.page.Page;
import pippinry.model.page.Words;
import pippinry.model.record.Column;
import pippinry.model.trie.IntTrie;

/** The next column table while it is being made: pages that are touched are unpacked once and packed once. */
final class ColumnDraft<T extends Record> {

    private static final int[] NONE = {};

    /** A page's cells by column and place. */
    private record Open(long[][] cells, boolean[] present) {}

    private final PageCells<T> cells;
    private final Map<Integer, Open> open = new LinkedHashMap<>();
    private final CitingDraft<Integer> cited = new CitingDraft<>();
    private Words words;
    private IntTrie<Page> pages;
    private IntTrie<int[]> citing;
    private KeyIndex byKey;
    private int size;
    private final int nextId;

    ColumnDraft(
            PageCells<T> cells,
            Words words,
            IntTrie<Page> pages,
            IntTrie<int[]> citing,
            KeyIndex byKey,
            int size,
            int nextId) {
        this.cells = cells;
        this.words = words;
        this.pages = pages;
        this.citing = citing;
        this.byKey = byKey;
        this.size = size;
        this.nextId = nextId;
    }

    boolean has(int id) {
        return open(id).present()[id % Page.ROWS];
    }

    void remove(int id) {
        Open page = open(id);
        int place = id % Page.ROWS;
        page.present()[place] = false;
        size--;
        for (int column : cells.citing()) {
            word(page.cells()[column][place]).ifPresent(word -> cited.remove(word, id));
        }
        cells.key().ifPresent(key -> byKey = byKey.without(page.cells()[key][place]));
    }

    void put(Row<T> row) {
        int id = row.id();
        int place = id % Page.ROWS;
        Open page = open(id);
        page.present()[place] = true;
        size++;
        for (int i = 0; i < cells.columns(); i++) {
            Column column = cells.kind().columns().get(i);
            page.cells()[i][place] = packed(i, cells.kind().cell(row.value(), column));
        }
        for (int column : cells.citing()) {
            word(page.cells()[column][place]).ifPresent(word -> cited.add(word, id));
        }
        cells.key().ifPresent(key -> byKey = byKey.with(page.cells()[key][place], id));
    }

    private long packed(int column, String text) {
        long plain = cells.plain(column, text);
        if (plain != Packed.NOT_PLAIN) {
            return plain;
        }
        int number = words.number(text).orElse(words.size());
        if (number == words.size()) {
            words = words.with(text);
        }
        return Packed.word(number);
    }

    private static OptionalInt word(long packed) {
        return Packed.isWord(packed) ? OptionalInt.of(Packed.wordNumber(packed)) : OptionalInt.empty();
    }

    private Open open(int id) {
        return open.computeIfAbsent(id / Page.ROWS, this::unpacked);
    }

    private Open unpacked(int number) {
        Open unpacked = new Open(new long[cells.columns()][Page.ROWS], new boolean[Page.ROWS]);
        pages.get(number).ifPresent(page -> unpack(page, unpacked));
        return unpacked;
    }

    private void unpack(Page page, Open into) {
        for (int place = 0; place < page.extent(); place++) {
            into.present()[place] = page.has(place);
            for (int column = 0; column < cells.columns(); column++) {
                into.cells()[column][place] = page.cell(column, place);
            }
        }
    }

    ColumnTable<T> table() {
        List<Integer> emptied = new ArrayList<>();
        open.forEach((number, page) -> {
            if (isEmpty(page)) {
                emptied.add(number);
            } else {
                pages = pages.with(number, Page.pack(cells.kind().table(), number, page.cells(), page.present()));
            }
        });
        emptied.forEach(number -> pages = pages.without(number));
        for (int word : cited.touched()) {
            int[] ids = cited.merged(word, citing.get(word).orElse(NONE));
            citing = ids.length == 0 ? citing.without(word) : citing.with(word, ids);
        }
        return new ColumnTable<>(cells, words, pages, citing, byKey, size, nextId);
    }

    private static boolean isEmpty(Open page) {
        for (boolean present : page.present()) {
            if (present) {
                return false;
            }
        }
        return true;
    }
}
