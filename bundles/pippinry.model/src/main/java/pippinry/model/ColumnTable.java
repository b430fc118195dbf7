package pippinry.model;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pippinry.model.page.Page;
import pippinry.model.page.Words;
import pippinry.model.record.Kind;
import pippinry.model.trie.IntTrie;

/**
 * Keeps rows in packed pages, a dozen bytes each where whole records take hundreds; a record is made when it is asked
 * for. A change costs one page per page touched, log32(n) for the path to it, and once per cited code the length of that
 * code's list. For kinds of which there are millions, with at most one key column.
 */
final class ColumnTable<T extends Record> implements PagedTable<T> {

    private static final int[] NONE = {};

    private final PageCells<T> cells;
    private final Words words;
    private final IntTrie<Page> pages;
    private final IntTrie<int[]> citing;
    private final KeyIndex byKey;
    private final int size;
    private final int nextId;

    ColumnTable(
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

    static <T extends Record> ColumnTable<T> empty(Kind<T> kind) {
        return new ColumnTable<>(
                new PageCells<>(kind), Words.none(), IntTrie.empty(), IntTrie.empty(), KeyIndex.empty(), 0, 0);
    }

    /** @param pages by number; null for one without rows */
    static <T extends Record> ColumnTable<T> of(Kind<T> kind, Words words, List<Page> pages, int nextId) {
        PageCells<T> cells = new PageCells<>(kind);
        int size =
                pages.stream().mapToInt(page -> page == null ? 0 : page.rows()).sum();
        return new ColumnTable<>(
                cells,
                words,
                IntTrie.of(pages),
                CitingLists.of(cells, words, pages),
                KeyIndex.of(cells, pages, size),
                size,
                nextId);
    }

    @Override
    public Kind<T> kind() {
        return cells.kind();
    }

    @Override
    public int size() {
        return size;
    }

    @Override
    public int nextId() {
        return nextId;
    }

    @Override
    public Words words() {
        return words;
    }

    @Override
    public Optional<Page> page(int number) {
        return pages.get(number);
    }

    @Override
    public Optional<T> get(int id) {
        return id < 0
                ? Optional.empty()
                : pages.get(id / Page.ROWS)
                        .filter(page -> page.has(id % Page.ROWS))
                        .map(page -> cells.read(page, id % Page.ROWS, words));
    }

    @Override
    public Optional<Row<T>> find(String key) {
        if (kind().key().isEmpty()) {
            return Optional.empty();
        }
        return cells.known(kind().key().get(0), key, words).stream()
                .mapToObj(byKey::get)
                .flatMapToInt(OptionalInt::stream)
                .mapToObj(this::row)
                .findFirst();
    }

    private Row<T> row(int id) {
        return new Row<>(id, get(id).orElseThrow());
    }

    /** Makes a record only when its turn comes, so that millions need not be there at once. */
    @Override
    public Stream<T> stream() {
        return IntStream.rangeClosed(0, nextId / Page.ROWS)
                .mapToObj(pages::get)
                .flatMap(Optional::stream)
                .flatMap(page -> IntStream.range(0, page.extent())
                        .filter(page::has)
                        .mapToObj(place -> cells.read(page, place, words)));
    }

    @Override
    public void forEach(Consumer<? super Row<T>> action) {
        pages.forEach((page, number) -> {
            for (int place = 0; place < page.extent(); place++) {
                if (page.has(place)) {
                    action.accept(new Row<>(number * Page.ROWS + place, cells.read(page, place, words)));
                }
            }
        });
    }

    @Override
    public List<Row<T>> citing(String code) {
        int[] ids = words.number(code).stream()
                .mapToObj(number -> citing.get(number).orElse(NONE))
                .findFirst()
                .orElse(NONE);
        return IntStream.of(ids).mapToObj(this::row).toList();
    }

    @Override
    public ColumnTable<T> with(List<Row<T>> put, List<Integer> removed, int nextId) {
        ColumnDraft<T> draft = new ColumnDraft<>(cells, words, pages, citing, byKey, size, nextId);
        removed.forEach(draft::remove);
        // All out before any in, so that two rows may change keys with each other.
        put.stream().map(Row::id).filter(draft::has).forEach(draft::remove);
        put.forEach(draft::put);
        return draft.table();
    }
}
