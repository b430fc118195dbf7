package pippinry.workbench.internal.view;

import java.awt.BorderLayout;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import pippinry.model.HistoryLine;
import pippinry.panels.Form;
import pippinry.panels.Panel;
import pippinry.panels.PanelAction;
import pippinry.panels.PanelContext;
import pippinry.workbench.internal.ChangeWords;

/** Every edit, by whom; what it changed; take it back, or look at the program as of its day. */
public final class HistoryPanel implements Panel {

    private static final int[] WIDTHS = {140, 50, 300, 70};
    private static final double LINES_SHARE = 0.65;
    private static final int LINES_HEIGHT = 320;

    private final PanelContext context;
    private final HistoryTable lines = new HistoryTable();
    private final JTable table = Form.table(lines);
    private final JList<String> changes = new JList<>();
    private final JPanel view = new JPanel(new BorderLayout(0, 8));
    private final List<PanelAction> actions = List.of(
            new PanelAction("Take back this edit", "ctrl BACK_SPACE", this::takeBack),
            new PanelAction("Look as of this day", "ctrl D", this::lookBack),
            new PanelAction("Come back to today", "ctrl shift D", () -> look(Optional.empty())));

    public HistoryPanel(PanelContext context) {
        this.context = context;
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.getSelectionModel().addListSelectionListener(event -> showChanges());
        for (int column = 0; column < WIDTHS.length; column++) {
            table.getColumnModel().getColumn(column).setPreferredWidth(WIDTHS[column]);
        }
        JSplitPane split =
                Form.split(JSplitPane.VERTICAL_SPLIT, new JScrollPane(table), new JScrollPane(changes), LINES_SHARE);
        split.setDividerLocation(LINES_HEIGHT);
        JPanel buttons =
                Form.row(Form.button(actions.get(0)), Form.button(actions.get(1)), Form.button(actions.get(2)));
        view.setOpaque(false);
        JPanel content = new JPanel(new BorderLayout(0, 12));
        content.setOpaque(false);
        content.add(split, BorderLayout.CENTER);
        content.add(buttons, BorderLayout.SOUTH);
        view.add(Form.padded(content), BorderLayout.CENTER);
        actions.forEach(action -> Form.bind(view, action));
        refresh();
    }

    @Override
    public JComponent view() {
        return view;
    }

    @Override
    public List<PanelAction> actions() {
        return actions;
    }

    @Override
    public String subtitle() {
        return "every change, the newest first";
    }

    @Override
    public void refresh() {
        lines.show(context.store().history());
        if (lines.getRowCount() > 0) {
            table.setRowSelectionInterval(0, 0);
        }
    }

    private Optional<HistoryLine> marked() {
        return table.getSelectedRow() < 0 ? Optional.empty() : Optional.of(lines.line(table.getSelectedRow()));
    }

    private void showChanges() {
        List<String> words = marked().map(line -> ChangeWords.of(context.store().changesOf(line.number())))
                .orElse(List.of());
        changes.setListData(words.toArray(String[]::new));
    }

    private void takeBack() {
        marked().ifPresent(line -> {
            if (context instanceof WindowContext window) {
                window.change(store -> store.takeBack(line.number(), context.author()));
            }
        });
    }

    private void lookBack() {
        marked().ifPresent(line -> look(Optional.of(LocalDate.ofInstant(line.time(), ZoneId.systemDefault()))));
    }

    private void look(Optional<LocalDate> day) {
        if (context instanceof WindowContext window) {
            window.lookBack(day);
        }
    }

    @Override
    public void close() {
        view.removeAll();
    }
}
