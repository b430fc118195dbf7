package pippinry.exchange.internal.bring;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pippinry.exchange.internal.bring.OwnList.ListRow;
import pippinry.exchange.internal.tables.Import;
import pippinry.exchange.internal.tables.Refusal;
import pippinry.model.Change;
import pippinry.model.Edit;
import pippinry.model.EditRefused;
import pippinry.model.Program;
import pippinry.model.record.Kind;
import pippinry.model.record.Kinds;
import pippinry.model.record.Task;

/**
 * Brings a person's own list in: what is clear becomes records, the rest is kept as tasks to be sorted out, with its original
 * text and the reason.
 */
public final class Bringing {

    private final OwnList list;
    private final ListRows rows;
    private final Import records;
    private final Map<Long, List<Change<?>>> clear = new LinkedHashMap<>();
    private final Map<Long, String> unclear = new TreeMap<>();

    public Bringing(
            Program program, OwnList list, Mapping mapping, Kind<?> meant, Optional<DateOrder> order, LocalDate today) {
        this.list = list;
        Known known = new Known(program);
        OwnDate dates = new OwnDate(order.orElseGet(() -> DateOrder.of(list)), today);
        this.rows = new ListRows(list, mapping, meant, new RowMeaning(program, known, dates));
        this.records = new Import(program, true);
        records.startFile(list.file());
        announce(known);
        list.rows().forEach(this::read);
        settle(program);
    }

    /** Rows may name each other, in any order. */
    private void announce(Known known) {
        for (ListRow row : list.rows()) {
            try {
                rows.number(row).ifPresent(number -> rows.announce(known, row, number));
            } catch (Unclear e) {
                // It is told when the row is read.
            }
        }
    }

    private void read(ListRow row) {
        try {
            List<Change<?>> changes = rows.read(row);
            clear.put(row.line(), changes);
            changes.forEach(change -> take(change, row.line()));
        } catch (Unclear e) {
            unclear.put(row.line(), e.getMessage());
        }
    }

    private <T extends Record> void take(Change<T> change, long line) {
        records.take(change.kind(), change.after().orElseThrow(), line);
    }

    /** Takes out rows with which the program would not hold together, until the rest does. */
    private void settle(Program program) {
        refusals(0);
        int told = records.refusals().size();
        while (!records.isEmpty()) {
            try {
                program.apply(records.edit("-"), Instant.EPOCH);
                return;
            } catch (EditRefused e) {
                records.refuse(e.faults());
                refusals(told);
                told = records.refusals().size();
            }
        }
    }

    private void refusals(int from) {
        List<Refusal> all = records.refusals();
        for (Refusal refusal : all.subList(from, all.size())) {
            unclear.merge(refusal.line(), refusal.inRow(), (one, other) -> one + "; " + other);
            clear.remove(refusal.line());
        }
    }

    /** Of the rows that are clear, what each makes; by line. */
    public Map<Long, List<Change<?>>> clear() {
        return clear;
    }

    /** Why a row is not clear; by line. */
    public Map<Long, String> unclear() {
        return unclear;
    }

    public String original(ListRow row) {
        return rows.original(row);
    }

    /** What came of the rows, by table. */
    public Map<String, Import.Counts> counts() {
        return records.counts();
    }

    /** The edit with what is clear and the tasks for the rest; empty if all of it is on file. */
    public Optional<Edit> edit(String author) {
        Path file = list.file().getFileName();
        for (ListRow row : list.rows()) {
            String why = unclear.get(row.line());
            if (why != null) {
                String text = "To be sorted out, row " + row.line() + ": " + original(row) + " - " + why;
                Task task =
                        new Task(file.toString(), Optional.empty(), text, "", Optional.empty(), Optional.empty(), "");
                records.take(Kinds.TASKS, task, row.line());
            }
        }
        List<Change<?>> changes = new ArrayList<>(
                records.isEmpty() ? List.of() : records.edit(author).changes());
        return changes.isEmpty() ? Optional.empty() : Optional.of(new Edit(author, "brought in " + file, changes));
    }
}
