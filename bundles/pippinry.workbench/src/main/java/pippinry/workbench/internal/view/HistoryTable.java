package pippinry.workbench.internal.view;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import javax.swing.table.AbstractTableModel;
import pippinry.model.HistoryLine;

/** Every edit, the newest first. */
final class HistoryTable extends AbstractTableModel {

    private static final long serialVersionUID = 1;
    private static final String[] HEADERS = {"When", "Hand", "What", "Records"};
    private static final DateTimeFormatter DAY =
            DateTimeFormatter.ofPattern("d MMM yyyy HH:mm").withZone(ZoneId.systemDefault());

    private transient List<HistoryLine> lines = List.of();

    void show(List<HistoryLine> history) {
        List<HistoryLine> newestFirst = new ArrayList<>(history);
        Collections.reverse(newestFirst);
        lines = newestFirst;
        fireTableDataChanged();
    }

    HistoryLine line(int row) {
        return lines.get(row);
    }

    @Override
    public int getRowCount() {
        return lines.size();
    }

    @Override
    public int getColumnCount() {
        return HEADERS.length;
    }

    @Override
    public String getColumnName(int column) {
        return HEADERS[column];
    }

    @Override
    public Class<?> getColumnClass(int column) {
        return column == HEADERS.length - 1 ? Integer.class : String.class;
    }

    @Override
    public Object getValueAt(int row, int column) {
        HistoryLine line = lines.get(row);
        return switch (column) {
            case 0 -> DAY.format(line.time());
            case 1 -> line.author();
            case 2 -> what(line);
            default -> line.records();
        };
    }

    private static String what(HistoryLine line) {
        if (line.takenBackBy().isPresent()) {
            return line.reason() + "  (taken back)";
        }
        return line.reason();
    }
}
