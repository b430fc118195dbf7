package pippinry.exchange.internal.tables;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.DoubleConsumer;
import java.util.stream.Stream;
import pippinry.model.Change;
import pippinry.model.Edit;
import pippinry.model.Fault;
import pippinry.model.Program;
import pippinry.model.number.NearestNumbers;
import pippinry.model.number.Reading;
import pippinry.model.record.CellRefused;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;

/** Plain tables on their way into a program: all files make one edit, so their order is free. */
public final class Import {

    private static final int NEAREST = 3;

    private final Program program;
    private final boolean update;
    private final List<Path> files = new ArrayList<>();
    private final Map<Kind<?>, TableRows<?>> tables = new HashMap<>();
    private final List<Change<?>> changes = new ArrayList<>();
    private final List<Origin> origins = new ArrayList<>();
    private final List<Refusal> refusals = new ArrayList<>();
    private final List<String> warnings = new ArrayList<>();
    private final Map<String, Counts> counts = new LinkedHashMap<>();

    /** How many rows of a table were new, changed what was on file, or were on file just so. */
    public static final class Counts {

        private final int[] byFate = new int[TableRows.Fate.values().length];

        public int added() {
            return byFate[TableRows.Fate.NEW.ordinal()];
        }

        public int changed() {
            return byFate[TableRows.Fate.CHANGED.ordinal()];
        }

        public int onFile() {
            return byFate[TableRows.Fate.ON_FILE.ordinal()];
        }

        private void count(TableRows.Fate fate, int times) {
            byFate[fate.ordinal()] += times;
        }
    }

    /** @param update whether a row may change the record that is on file under its key */
    public Import(Program program, boolean update) {
        this.program = program;
        this.update = update;
    }

    /**
     * Reads a file to its end; rows that cannot be taken in are kept as {@link #refusals}.
     *
     * @param progress bytes read so far, now and then
     * @throws FileRefused if the file is no such table at all
     */
    public void read(Path file, Kind<?> kind, DoubleConsumer progress) throws FileRefused {
        startFile(file);
        try (CsvLines lines = CsvLines.open(file)) {
            CsvLines.Line header = lines.next()
                    .orElseThrow(() -> new FileRefused(Refusal.ofFile(file, "it is empty; a header row was expected")));
            readRows(kind, Heading.read(file, kind, header), lines, progress);
        }
    }

    /** Rows taken from now on stand in this file. */
    public void startFile(Path file) {
        files.add(file);
    }

    /** Takes a record that was read elsewhere in the file. */
    public <T extends Record> void take(Kind<T> kind, T row, long line) {
        take(rows(kind), row, new Origin(files.size() - 1, line));
    }

    private <T extends Record> void readRows(Kind<T> kind, Heading heading, CsvLines lines, DoubleConsumer progress)
            throws FileRefused {
        OtherColumns<T> others = new OtherColumns<>(kind, heading);
        TableRows<T> table = rows(kind);
        RowReader<T> reader = new RowReader<>(kind, heading, others, this::near);
        Path file = files.get(files.size() - 1);
        for (Optional<CsvLines.Line> line = lines.next(); line.isPresent(); line = lines.next()) {
            Origin here = new Origin(files.size() - 1, line.get().number());
            try {
                T row = reader.read(line.get().cells(), table);
                if (take(table, row, here)) {
                    others.notes(line.get().cells(), row).forEach(note -> take(rows(Kinds.NOTES), note, here));
                }
            } catch (CellRefused e) {
                refusals.add(new Refusal(file, here.line(), e.column(), e.value(), "expected " + e.expected()));
            }
            progress.accept(lines.passed());
        }
        others.warnings().forEach(warning -> warnings.add(file + ": " + warning));
    }

    private <T extends Record> boolean take(TableRows<T> table, T row, Origin here) {
        Optional<Origin> before = table.before(row, here);
        TableRows.Fate fate = table.fate(row);
        Path file = files.get(here.file());
        if (before.isPresent()) {
            String key = table.kind().keyOf(row).orElseThrow();
            String there =
                    files.get(before.get().file()) + " line " + before.get().line();
            refusals.add(new Refusal(
                    file, here.line(), keyColumn(table.kind()), key, "this stands in " + there + " already"));
        } else if (fate == TableRows.Fate.CHANGED && !update) {
            String key = table.kind().keyOf(row).orElseThrow();
            refusals.add(new Refusal(
                    file,
                    here.line(),
                    keyColumn(table.kind()),
                    key,
                    "this is on file with other values (" + String.join("; ", table.differences(row))
                            + "); --update would change them"));
        } else {
            add(table, row, fate, here);
            return true;
        }
        return false;
    }

    private <T extends Record> void add(TableRows<T> table, T row, TableRows.Fate fate, Origin here) {
        counts.computeIfAbsent(table.kind().table(), any -> new Counts()).count(fate, 1);
        if (fate != TableRows.Fate.ON_FILE) {
            changes.add(new Change<>(table.kind(), OptionalInt.empty(), Optional.of(row)));
            origins.add(here);
        }
    }

    private static String keyColumn(Kind<?> kind) {
        return String.join("/", kind.key().stream().map(Object::toString).toList());
    }

    @SuppressWarnings("unchecked")
    private <T extends Record> TableRows<T> rows(Kind<T> kind) {
        return (TableRows<T>) tables.computeIfAbsent(kind, any -> new TableRows<>(kind, program.table(kind)));
    }

    private List<String> near(Reading typed) {
        Stream<String> onFile = Stream.of(
                        Kinds.GENOTYPES, Kinds.PLANTS, Kinds.CROSSES, Kinds.POLLINATIONS, Kinds.SEEDLOTS)
                .flatMap(this::keys)
                .distinct();
        return NearestNumbers.of(typed, onFile, NEAREST);
    }

    private <T extends Record> Stream<String> keys(Kind<T> kind) {
        return program.table(kind).stream().map(row -> kind.keyOf(row).orElseThrow());
    }

    /** Why rows were refused, file by file in the order of their lines. */
    public List<Refusal> refusals() {
        return refusals;
    }

    /** What was read otherwise than it stands there. */
    public List<String> warnings() {
        return warnings;
    }

    /** By table, what its rows came to. */
    public Map<String, Counts> counts() {
        return counts;
    }

    /** Whether there is anything to change. */
    public boolean isEmpty() {
        return changes.isEmpty();
    }

    /** The edit of all rows that were not refused. */
    public Edit edit(String author) {
        String what = files.size() == 1 ? "import of 1 file" : "import of " + files.size() + " files";
        return new Edit(author, what, changes);
    }

    /** Refuses the rows with which the program would not hold together. */
    public void refuse(List<Fault> faults) {
        Set<Origin> faulty = new HashSet<>();
        for (Fault fault : faults) {
            Origin origin = origins.get(fault.change());
            faulty.add(origin);
            refusals.add(new Refusal(
                    files.get(origin.file()), origin.line(), fault.column(), fault.value(), fault.reason()));
        }
        List<Change<?>> all = List.copyOf(changes);
        List<Origin> whence = List.copyOf(origins);
        changes.clear();
        origins.clear();
        for (int i = 0; i < all.size(); i++) {
            if (faulty.contains(whence.get(i))) {
                uncount(all.get(i));
            } else {
                changes.add(all.get(i));
                origins.add(whence.get(i));
            }
        }
    }

    private void uncount(Change<?> change) {
        counts.get(change.kind().table()).count(fateOf(change), -1);
    }

    private <T extends Record> TableRows.Fate fateOf(Change<T> change) {
        return rows(change.kind()).onFile(change.after().orElseThrow()).isPresent()
                ? TableRows.Fate.CHANGED
                : TableRows.Fate.NEW;
    }
}
