package pippinry.labels.internal.view;

import java.awt.BorderLayout;
import java.awt.Color;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextField;
import pippinry.labels.internal.entry.Box;
import pippinry.labels.internal.entry.Filing;
import pippinry.labels.internal.entry.PaperRows;
import pippinry.labels.internal.entry.SheetPhoto;
import pippinry.labels.internal.entry.Sitting;
import pippinry.labels.internal.wanted.SheetOnFile;
import pippinry.model.Edit;
import pippinry.model.EditRefused;
import pippinry.model.Fault;
import pippinry.model.Program;
import pippinry.model.record.Kinds;
import pippinry.model.record.Sheet;
import pippinry.panels.Form;
import pippinry.panels.Panel;
import pippinry.panels.PanelAction;
import pippinry.panels.PanelContext;
import pippinry.panels.Sentences;
import pippinry.traits.CropPack;

/** A sheet typed in with cold hands: the number stands there, Tab, the value, Enter; the next row comes by itself. */
public final class EnterPanel implements Panel, Filing {

    private static final int NUMBER_WIDTH = 12;
    private static final int VALUE_WIDTH = 6;

    private final PanelContext context;
    private final List<CropPack> packs;
    private final JPanel view = new JPanel(new BorderLayout());
    private final JPanel body = new JPanel(new BorderLayout());
    private final JComboBox<String> sheets = new JComboBox<>();
    private final JTextField number = new JTextField(NUMBER_WIDTH);
    private final List<JTextField> boxes = new ArrayList<>();
    private final Sentences reply;
    private final Sentences last;
    private final JTable rows = Form.table(new javax.swing.table.DefaultTableModel());
    private final List<PanelAction> actions = List.of(
            new PanelAction("Put the row on file", "ctrl ENTER", this::enter),
            new PanelAction("Take back the last entry", "ctrl BACK_SPACE", this::takeBack),
            new PanelAction("Keep a photo of the sheet", "", this::photo));
    private PaperRows paper;
    private Sitting sitting;
    private boolean filling;

    public EnterPanel(PanelContext context, List<CropPack> packs) {
        this.context = context;
        this.packs = packs;
        this.reply = Form.sentences("", context.palette().text());
        this.last = Form.sentences("", context.palette().quiet());
        view.setOpaque(false);
        body.setOpaque(false);
        actions.forEach(action -> Form.bind(view, action));
        sheets.addActionListener(event -> open());
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

    /** What is being typed stays. */
    @Override
    public void refresh() {
        List<String> there = context.program().table(Kinds.SHEETS).stream()
                .map(sheet -> sheet.sheet().text())
                .sorted(Comparator.reverseOrder())
                .toList();
        if (there.isEmpty()) {
            nothingYet();
        } else if (!there.equals(offered())) {
            offer(there);
        } else {
            rows.repaint();
        }
    }

    private void nothingYet() {
        show(Form.nothingYet(
                "No sheet was printed yet. Print one in walking order, fill it in with a pencil, and type it in here in the"
                        + " same order.",
                context.palette(),
                new PanelAction("Print a scab sheet", "", this::printFirst)));
    }

    /** The sheet that most people begin with; 'sheets --help' tells of the others. */
    private void printFirst() {
        context.chooseFile("Print a score sheet to a file", "scab.pdf")
                .ifPresent(file -> context.run(List.of("sheets", "--trait", "scab_leaf", "--out", file.toString())));
    }

    private List<String> offered() {
        List<String> offered = new ArrayList<>();
        for (int i = 0; i < sheets.getItemCount(); i++) {
            offered.add(sheets.getItemAt(i));
        }
        return offered;
    }

    private void offer(List<String> there) {
        Object chosen = sheets.getSelectedItem();
        filling = true;
        sheets.removeAllItems();
        there.forEach(sheets::addItem);
        sheets.setSelectedItem(there.contains(chosen) ? chosen : there.get(0));
        filling = false;
        open();
    }

    private void open() {
        String chosen = (String) sheets.getSelectedItem();
        if (filling || chosen == null) {
            return;
        }
        try {
            Program program = context.program();
            paper = PaperRows.of(program, packs, SheetOnFile.find(program, chosen));
            sitting = new Sitting(this, paper, context.today(), context.author());
            rows.setModel(new EntryRows(paper, sitting));
            show(form());
            say("", context.palette().text());
            next();
        } catch (IllegalArgumentException e) {
            show(Form.column(Form.row(Form.label("Sheet"), sheets), Form.sentences(e.getMessage(), warning())));
        }
    }

    private JComponent form() {
        JPanel line = Form.row(Form.label("Number"), number);
        boxes.clear();
        for (Box box : paper.boxes()) {
            JTextField field = new JTextField(VALUE_WIDTH);
            field.setToolTipText(box.expected(false));
            field.getAccessibleContext().setAccessibleName(box.name());
            field.addActionListener(event -> leave(field));
            boxes.add(field);
            line.add(Form.label(box.name() + (box.unit().isBlank() ? "" : ", " + box.unit())));
            line.add(field);
        }
        JPanel buttons =
                Form.row(Form.mainButton(actions.get(0)), Form.button(actions.get(1)), Form.button(actions.get(2)));
        JPanel top = Form.column(
                Form.row(Form.label("Sheet"), sheets),
                line,
                buttons,
                reply,
                last,
                Form.sentences(
                        "An empty row is not entered; ns is not seen. An unusual value is entered twice.",
                        context.palette().quiet()));
        JPanel all = new JPanel(new BorderLayout());
        all.setOpaque(false);
        all.add(Form.padded(top), BorderLayout.NORTH);
        all.add(new JScrollPane(rows), BorderLayout.CENTER);
        return all;
    }

    private void show(JComponent component) {
        body.removeAll();
        body.add(component);
        view.add(body);
        view.revalidate();
        view.repaint();
    }

    /** Enter goes on to the next box, and from the last one puts the row on file. */
    private void leave(JTextField field) {
        int next = boxes.indexOf(field) + 1;
        if (next < boxes.size()) {
            boxes.get(next).requestFocusInWindow();
        } else {
            enter();
        }
    }

    private void enter() {
        if (sitting == null) {
            return;
        }
        Sitting.Reply answer = sitting.enter(
                number.getText(), boxes.stream().map(JTextField::getText).toList());
        switch (answer.did()) {
            case REFUSED, ASKED -> say(answer.words(), warning());
            default -> {
                say("", context.palette().text());
                next();
            }
        }
    }

    private void takeBack() {
        if (sitting != null) {
            Sitting.Reply answer = sitting.take("back");
            say(
                    answer.words(),
                    answer.did() == Sitting.Did.REFUSED
                            ? warning()
                            : context.palette().text());
            next();
        }
    }

    private Color warning() {
        return context.palette().warning();
    }

    private void say(String words, Color colour) {
        reply.setForeground(colour);
        reply.setText(words);
    }

    /** The next row of the paper, ready to be typed. */
    private void next() {
        boxes.forEach(field -> field.setText(""));
        last.setText(sitting.last().isEmpty() ? "" : "Entered last: " + sitting.last());
        rows.repaint();
        if (sitting.isOver()) {
            number.setText("");
            say(
                    "The last row is reached. A number goes back to its row.",
                    context.palette().text());
            number.requestFocusInWindow();
            return;
        }
        number.setText(paper.lines().get(sitting.row()).number());
        rows.setRowSelectionInterval(sitting.row(), sitting.row());
        rows.scrollRectToVisible(rows.getCellRect(sitting.row(), 0, true));
        if (!boxes.isEmpty()) {
            boxes.get(0).requestFocusInWindow();
        }
    }

    private void photo() {
        if (sitting == null) {
            return;
        }
        JFileChooser chooser = new JFileChooser();
        chooser.setDialogTitle("A photo of the sheet");
        if (chooser.showOpenDialog(view) == JFileChooser.APPROVE_OPTION) {
            keep(chooser.getSelectedFile().toPath(), paper.sheet());
        }
    }

    private void keep(Path picture, Sheet sheet) {
        try {
            Path folder = context.store().folder();
            context.apply(SheetPhoto.keep(picture, folder, sheet, context.today(), context.author()));
        } catch (IOException e) {
            say("The photo could not be copied: " + e.getMessage(), warning());
        }
    }

    @Override
    public Program now() {
        return context.program();
    }

    @Override
    public long file(Edit edit) throws EditRefused {
        if (!context.apply(edit)) {
            throw new EditRefused(List.of(
                    new Fault(0, "sheets", paper.sheet().sheet().text(), "", "", "the row was not put on file")));
        }
        return context.store().now().edit();
    }

    @Override
    public void takeBack(long edit) throws EditRefused {
        context.store().takeBack(edit, context.author());
    }

    @Override
    public void close() {
        view.removeAll();
    }
}
