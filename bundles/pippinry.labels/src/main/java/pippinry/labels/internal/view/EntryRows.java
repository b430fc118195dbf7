package pippinry.labels.internal.view;

import java.util.List;
import java.util.Optional;
import javax.swing.table.AbstractTableModel;
import pippinry.labels.internal.entry.PaperRows;
import pippinry.labels.internal.entry.Sitting;
import pippinry.model.value.ScoreValue;

/** The rows of a sheet as they stand on the paper, with what was typed in. */
final class EntryRows extends AbstractTableModel {

    private static final long serialVersionUID = 1;
    private static final List<String> FIRST = List.of("Row", "Number", "Who");

    private final transient PaperRows paper;
    private final transient Sitting sitting;

    EntryRows(PaperRows paper, Sitting sitting) {
        this.paper = paper;
        this.sitting = sitting;
    }

    @Override
    public int getRowCount() {
        return paper.lines().size();
    }

    @Override
    public int getColumnCount() {
        return FIRST.size() + paper.boxes().size();
    }

    @Override
    public String getColumnName(int column) {
        return column < FIRST.size()
                ? FIRST.get(column)
                : paper.boxes().get(column - FIRST.size()).name();
    }

    @Override
    public Object getValueAt(int row, int column) {
        PaperRows.Line line = paper.lines().get(row);
        return switch (column) {
            case 0 -> row + 1;
            case 1 -> line.number();
            case 2 -> line.who();
            default -> typed(row, column - FIRST.size());
        };
    }

    private String typed(int row, int box) {
        Optional<ScoreValue> known = sitting.known(row).get(box);
        return known.map(ScoreValue::text).orElse("");
    }
}
