package pippinry.model;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import pippinry.model.record.Column;
import pippinry.model.record.Kind;
import pippinry.model.trie.IntTrie;
import pippinry.model.trie.TextTrie;

/**
 * Keeps whole records: by id, by key, and by the codes that they cite. A change costs log32(n) per record, and once per
 * cited code the length of that code's list.
 */
final class RecordTable<T extends Record> implements Table<T> {

    private static final int[] NONE = {};

    private final Kind<T> kind;
    private final IntTrie<T> byId;
    private final TextTrie<Integer> byKey;
    private final TextTrie<int[]> citing;
    private final int nextId;

    private RecordTable(Kind<T> kind, IntTrie<T> byId, TextTrie<Integer> byKey, TextTrie<int[]> citing, int nextId) {
        this.kind = kind;
        this.byId = byId;
        this.byKey = byKey;
        this.citing = citing;
        this.nextId = nextId;
    }

    static <T extends Record> RecordTable<T> empty(Kind<T> kind) {
        return new RecordTable<>(kind, IntTrie.empty(), TextTrie.empty(), TextTrie.empty(), 0);
    }

    /** All rows at once, which costs much less than one after another. */
    static <T extends Record> RecordTable<T> of(Kind<T> kind, List<Row<T>> rows, int nextId) {
        List<T> values = new ArrayList<>(Collections.nCopies(nextId, null));
        List<String> keys = new ArrayList<>();
        Map<String, IntStream.Builder> citing = new HashMap<>();
        for (Row<T> row : rows) {
            values.set(row.id(), row.value());
            kind.keyOf(row.value()).ifPresent(keys::add);
            codesIn(kind, row.value()).forEach(code -> citing.computeIfAbsent(code, any -> IntStream.builder())
                    .add(row.id()));
        }
        List<String> cited = List.copyOf(citing.keySet());
        return new RecordTable<>(
                kind,
                IntTrie.of(values),
                TextTrie.of(keys, i -> rows.get(i).id()),
                TextTrie.of(cited, i -> citing.get(cited.get(i)).build().toArray()),
                nextId);
    }

    @Override
    public Kind<T> kind() {
        return kind;
    }

    @Override
    public int size() {
        return byId.size();
    }

    @Override
    public Optional<T> get(int id) {
        return byId.get(id);
    }

    @Override
    public Optional<Row<T>> find(String key) {
        return byKey.get(key).map(id -> new Row<>(id, byId.get(id).orElseThrow()));
    }

    @Override
    public void forEach(Consumer<? super Row<T>> action) {
        byId.forEach((value, id) -> action.accept(new Row<>(id, value)));
    }

    @Override
    public List<Row<T>> citing(String code) {
        return IntStream.of(citing.get(code).orElse(NONE))
                .mapToObj(id -> new Row<>(id, byId.get(id).orElseThrow()))
                .toList();
    }

    @Override
    public int nextId() {
        return nextId;
    }

    @Override
    public RecordTable<T> with(List<Row<T>> put, List<Integer> removed, int nextId) {
        Draft draft = new Draft(nextId);
        removed.forEach(draft::remove);
        // All out before any in, so that two rows may change keys with each other.
        put.stream().map(Row::id).filter(id -> get(id).isPresent()).forEach(draft::remove);
        put.forEach(draft::put);
        return draft.table();
    }

    private static <T extends Record> Set<String> codesIn(Kind<T> kind, T value) {
        Set<String> codes = new LinkedHashSet<>();
        for (Column column : kind.columns()) {
            codes.addAll(kind.cited(value, column));
        }
        return codes;
    }

    /** The next table while it is being made; lists of citing rows change once per code, however many rows there are. */
    private final class Draft {

        private IntTrie<T> ids = byId;
        private TextTrie<Integer> keys = byKey;
        private final int next;
        private final CitingDraft<String> cited = new CitingDraft<>();

        private Draft(int next) {
            this.next = next;
        }

        void remove(int id) {
            T value = ids.get(id).orElseThrow();
            ids = ids.without(id);
            keys = kind.keyOf(value).map(keys::without).orElse(keys);
            codesIn(kind, value).forEach(code -> cited.remove(code, id));
        }

        void put(Row<T> row) {
            ids = ids.with(row.id(), row.value());
            keys = kind.keyOf(row.value()).map(key -> keys.with(key, row.id())).orElse(keys);
            codesIn(kind, row.value()).forEach(code -> cited.add(code, row.id()));
        }

        RecordTable<T> table() {
            TextTrie<int[]> cites = citing;
            for (String code : cited.touched()) {
                int[] list = cited.merged(code, citing.get(code).orElse(NONE));
                cites = list.length == 0 ? cites.without(code) : cites.with(code, list);
            }
            return new RecordTable<>(kind, ids, keys, cites, next);
        }
    }
}
