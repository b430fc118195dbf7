package pippinry.model;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import pippinry.model.page.Page;
import pippinry.model.page.Words;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;
import pippinry.model.record.Setting;
import pippinry.model.value.Code;

/**
 * A breeding program as it stood after one edit: an immutable value. Reading needs no lock, and an old one reads the
 * same for ever. A change makes a new one that shares all that stayed.
 */
public final class Program {

    private final long edit;
    private final Instant time;
    private final Map<Kind<?>, Table<?>> tables;
    private final Map<Class<?>, Object> derived = new ConcurrentHashMap<>();

    private Program(long edit, Instant time, Map<Kind<?>, Table<?>> tables) {
        this.edit = edit;
        this.time = time;
        this.tables = tables;
    }

    /** A program without any record, before its first edit. */
    public static Program empty() {
        Map<Kind<?>, Table<?>> tables = new HashMap<>();
        Kinds.ALL.forEach(kind -> tables.put(kind, Tables.empty(kind)));
        return new Program(0, Instant.EPOCH, tables);
    }

    /** Begins to put a program together again from rows that were checked when they were entered. */
    public static Restoring restoring() {
        return new Restoring();
    }

    /** Number of the last edit in it; 0 before the first. */
    public long edit() {
        return edit;
    }

    /** When the last edit was made. */
    public Instant time() {
        return time;
    }

    @SuppressWarnings("unchecked")
    public <T extends Record> Table<T> table(Kind<T> kind) {
        return (Table<T>) tables.get(kind);
    }

    public <T extends Record> Optional<T> find(Kind<T> kind, Code<T> code) {
        return table(kind).find(code);
    }

    /** The value of a setting such as {@code name}; empty if it was never set. */
    public Optional<String> setting(String key) {
        return find(Kinds.SETTINGS, Code.of(key)).map(Setting::value);
    }

    /**
     * Something worked out from this program, kept as long as the program itself is.
     *
     * @param type of the result, which is also its name: one result of a type for each program
     */
    public <V> V derived(Class<V> type, Function<Program, V> work) {
        Object known = derived.get(type);
        if (known == null) {
            // Not computeIfAbsent: the work may ask for other derived values, and twice the work does no harm.
            V fresh = work.apply(this);
            Object first = derived.putIfAbsent(type, fresh);
            known = first == null ? fresh : first;
        }
        return type.cast(known);
    }

    /**
     * The program after this edit.
     *
     * @throws EditRefused with every fault, if a code would stand for two records, name none, or a rule be broken
     */
    public Outcome apply(Edit wanted, Instant at) throws EditRefused {
        return checked(new Settling(this).settle(wanted), at);
    }

    /**
     * The program after the reverse of changes that an earlier edit made.
     *
     * @throws EditRefused if a row does not stand as that edit left it, or a rule would be broken
     */
    public Outcome takeBack(List<Settled<?>> done, Instant at) throws EditRefused {
        List<Settled<?>> changes = new Reversal(this).of(done);
        return checked(changes, at);
    }

    private Outcome checked(List<Settled<?>> changes, Instant at) throws EditRefused {
        Program after = with(changes, edit + 1, at);
        List<Fault> faults = new Rules(after).check(changes);
        if (!faults.isEmpty()) {
            throw new EditRefused(faults);
        }
        return new Outcome(after, changes);
    }

    /** The program after changes that were checked when they were made: used when a ledger is read again. */
    public Program with(List<Settled<?>> changes, long number, Instant at) {
        Map<Kind<?>, Table<?>> next = new HashMap<>(tables);
        Map<Kind<?>, List<Settled<?>>> byKind = new HashMap<>();
        changes.forEach(change ->
                byKind.computeIfAbsent(change.kind(), any -> new ArrayList<>()).add(change));
        byKind.forEach((kind, some) -> next.put(kind, Tables.with(table(kind), some)));
        return new Program(number, at, next);
    }

    /** Every fault of the program as it stands; empty if it holds together. */
    public List<Fault> faults() {
        return new Rules(this).checkAll();
    }

    /** A program while its tables are being filled from disk. */
    public static final class Restoring {

        private final Map<Kind<?>, Table<?>> tables = new HashMap<>(empty().tables);

        private Restoring() {}

        /**
         * @param rows all rows of the table, in the order of their ids
         * @param nextId that the next new row gets, above all ids ever given
         */
        public <T extends Record> Restoring table(Kind<T> kind, List<Row<T>> rows, int nextId) {
            tables.put(kind, Tables.of(kind, rows, nextId));
            return this;
        }

        /**
         * @param words of the table, in the order of their numbers
         * @param pages by number, null for one without rows
         * @param nextId that the next new row gets, above all ids ever given
         */
        public <T extends Record> Restoring table(Kind<T> kind, Words words, List<Page> pages, int nextId) {
            tables.put(kind, Tables.of(kind, words, pages, nextId));
            return this;
        }

        public Program program(long edit, Instant time) {
            return new Program(edit, time, Map.copyOf(tables));
        }
    }
}
