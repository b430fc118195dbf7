package pippinry.workbench.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import pippinry.model.Settled;
import pippinry.model.record.Column;
import pippinry.model.record.Kind;

/** Tells the changes of an edit by their kind, a line each; of very many alike only the first. */
public final class ChangeWords {

    private static final int MOST_OF_A_KIND = 40;

    private ChangeWords() {}

    public static List<String> of(List<Settled<?>> changes) {
        Map<Kind<?>, List<Settled<?>>> byKind = new LinkedHashMap<>();
        changes.forEach(change ->
                byKind.computeIfAbsent(change.kind(), any -> new ArrayList<>()).add(change));
        List<String> lines = new ArrayList<>();
        byKind.forEach((kind, some) -> tell(kind, some, lines));
        return lines;
    }

    private static void tell(Kind<?> kind, List<Settled<?>> some, List<String> lines) {
        lines.add("%s: %,d".formatted(kind.table(), some.size()));
        some.stream().limit(MOST_OF_A_KIND).map(ChangeWords::line).forEach(line -> lines.add("    " + line));
        if (some.size() > MOST_OF_A_KIND) {
            lines.add("    and %,d more".formatted(some.size() - MOST_OF_A_KIND));
        }
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
                .map(column -> kind.cell(row, column))
                .filter(cell -> !cell.isEmpty())
                .limit(3)
                .collect(Collectors.joining(" ")));
    }

    private static String label(Column column) {
        return column.name().replace('_', ' ');
    }

    private static String orNothing(String cell) {
        return cell.isEmpty() ? "nothing" : cell;
    }
}
