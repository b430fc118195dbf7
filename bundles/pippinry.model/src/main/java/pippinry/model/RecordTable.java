package pippinry.model;

import java.util.ArrayList;
import java.util.Arrays;
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

    static <T extends Record> RecordTable<T> of(Kind<T> kind, List<Row<T>> rows, int nextId) {
        RecordTable<T> table = RecordTable.empty(kind).with(rows, List.of());
        return new RecordTable<>(kind, table.byId, table.byKey, table.citing, Math.max(nextId, table.nextId));
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
    public RecordTable<T> with(List<Row<T>> put, List<Integer> removed) {
        Draft draft = new Draft();
        removed.forEach(draft::remove);
        // All out before any in, so that two rows may change keys with each other.
        put.stream().map(Row::id).filter(id -> get(id).isPresent()).forEach(draft::remove);
        put.forEach(draft::put);
        return draft.table();
    }

    private Set<String> codesIn(T value) {
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
        private int next = nextId;
        private final Map<String, Set<Integer>> gone = new HashMap<>();
        private final Map<String, List<Integer>> come = new HashMap<>();

        void remove(int id) {
            T value = ids.get(id).orElseThrow();
            ids = ids.without(id);
            keys = kind.keyOf(value).map(keys::without).orElse(keys);
            codesIn(value).forEach(code -> uncite(code, id));
        }

        void put(Row<T> row) {
            ids = ids.with(row.id(), row.value());
            keys = kind.keyOf(row.value()).map(key -> keys.with(key, row.id())).orElse(keys);
            next = Math.max(next, row.id() + 1);
            codesIn(row.value()).forEach(code -> come.computeIfAbsent(code, any -> new ArrayList<>())
                    .add(row.id()));
        }

        private void uncite(String code, int id) {
            List<Integer> fresh = come.get(code);
            if (fresh == null || !fresh.remove(Integer.valueOf(id))) {
                gone.computeIfAbsent(code, any -> new LinkedHashSet<>()).add(id);
            }
        }

        RecordTable<T> table() {
            Set<String> touched = new LinkedHashSet<>(gone.keySet());
            touched.addAll(come.keySet());
            TextTrie<int[]> cites = citing;
            for (String code : touched) {
                int[] ids = merged(code);
                cites = ids.length == 0 ? cites.without(code) : cites.with(code, ids);
            }
            return new RecordTable<>(kind, ids, keys, cites, next);
        }

        private int[] merged(String code) {
            Set<Integer> out = gone.getOrDefault(code, Set.of());
            IntStream stay = Arrays.stream(citing.get(code).orElse(NONE)).filter(id -> !out.contains(id));
            IntStream added = come.getOrDefault(code, List.of()).stream().mapToInt(Integer::intValue);
            return IntStream.concat(stay, added).sorted().toArray();
        }
    }
}
