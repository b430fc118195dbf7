package pippinry.exchange.internal.tables;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import pippinry.model.record.CellRefused;
import pippinry.model.record.Column;
import pippinry.model.record.Kind;

/** Makes records of one file's rows. */
final class RowReader<T extends Record> {

    private final Kind<T> kind;
    private final Heading heading;
    private final OtherColumns<T> others;
    private final Map<String, TypedCell> typed = new HashMap<>();

    RowReader(Kind<T> kind, Heading heading, OtherColumns<T> others, TypedCell.Nearest nearest) {
        this.kind = kind;
        this.heading = heading;
        this.others = others;
        kind.columns().forEach(column -> typed.put(column.name(), new TypedCell(kind, column, nearest)));
    }

    /**
     * The record that the row stands for.
     *
     * @param onFile finds the record with the same key; it says what stands in the columns that this file lacks
     */
    T read(List<String> cells, TableRows<T> onFile) throws CellRefused {
        checkWidth(cells);
        Map<String, String> texts = texts(cells);
        T row = kind.read(name -> texts.getOrDefault(name, ""));
        Optional<T> old = texts.size() == kind.columns().size() ? Optional.empty() : onFile.onFile(row);
        return old.isEmpty() ? row : kind.read(overlaid(texts, old.get()));
    }

    private UnaryOperator<String> overlaid(Map<String, String> texts, T old) {
        return name -> {
            String text = texts.get(name);
            return text == null ? kind.cell(old, kind.column(name).orElseThrow()) : text;
        };
    }

    private Map<String, String> texts(List<String> cells) throws CellRefused {
        Map<String, String> texts = new HashMap<>();
        for (Column column : kind.columns()) {
            if (heading.has(column)) {
                texts.put(column.name(), typed.get(column.name()).read(heading.cell(cells, column)));
            }
        }
        others.intoNote(cells, texts);
        return texts;
    }

    private void checkWidth(List<String> cells) throws CellRefused {
        if (cells.size() < heading.width()) {
            String row = String.join(",", cells);
            throw new CellRefused("", row, cellsExpected() + ", here are " + cells.size());
        }
        for (int i = heading.width(); i < cells.size(); i++) {
            if (!cells.get(i).isEmpty()) {
                throw new CellRefused("", cells.get(i), cellsExpected() + ", this is number " + (i + 1));
            }
        }
        for (int place : heading.nameless()) {
            if (!cells.get(place).isEmpty()) {
                throw new CellRefused("", cells.get(place), "nothing under a header without a name");
            }
        }
    }

    private String cellsExpected() {
        return heading.width() + " cells as in the header";
    }
}
