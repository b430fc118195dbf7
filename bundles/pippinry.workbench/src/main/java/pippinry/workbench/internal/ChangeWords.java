package pippinry.workbench.internal;

import java.util.List;
import java.util.stream.Collectors;
import pippinry.model.Settled;
import pippinry.model.record.Column;
import pippinry.model.record.Kind;

/** Tells the changes of an edit, a line each. */
public final class ChangeWords {

    private static final int MOST = 500;

    private ChangeWords() {}

    public static List<String> of(List<Settled<?>> changes) {
        return changes.stream().limit(MOST).map(ChangeWords::line).toList();
    }

    private static <T extends Record> String line(Settled<T> change) {
        Kind<T> kind = change.kind();
        if (change.before().isEmpty()) {
            return name(kind, change.after().orElseThrow()) + ": new";
        }
        if (change.after().isEmpty()) {
            return name(kind, change.before().get()) + ": taken out";
        }
        return name(kind, change.after().get()) + ": "
                + differences(kind, change.before().get(), change.after().get());
    }

    private static <T extends Record> String differences(Kind<T> kind, T before, T after) {
        return kind.columns().stream()
                .filter(column -> !kind.cell(before, column).equals(kind.cell(after, column)))
                .map(column -> label(column) + " " + orNothing(kind.cell(before, column)) + " → "
                        + orNothing(kind.cell(after, column)))
                .collect(Collectors.joining(", "));
    }

    private static <T extends Record> String name(Kind<T> kind, T row) {
        return kind.keyOf(row).orElseGet(() -> kind.columns().stream()
                .limit(3)
                .map(column -> kind.cell(row, column))
                .collect(Collectors.joining(" ")));
    }

    private static String label(Column column) {
        return column.name().replace('_', ' ');
    }

    private static String orNothing(String cell) {
        return cell.isEmpty() ? "nothing" : cell;
    }
}
