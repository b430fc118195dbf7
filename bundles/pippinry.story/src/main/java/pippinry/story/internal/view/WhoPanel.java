package pippinry.story.internal.view;

import java.awt.BorderLayout;
import java.awt.Component;
import java.util.List;
import javax.swing.Box;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextField;
import pippinry.model.Program;
import pippinry.panels.Form;
import pippinry.panels.Panel;
import pippinry.panels.PanelAction;
import pippinry.panels.PanelContext;
import pippinry.story.internal.number.DueWork;
import pippinry.story.internal.number.Looked;
import pippinry.story.internal.number.Lookup;
import pippinry.story.internal.number.Story;
import pippinry.story.internal.number.StoryWords;

/** The whole story of one number: the selected one, or one that is typed, also an old tag, a name or a place. */
public final class WhoPanel implements Panel {

    private static final int GAP = 4;
    private static final int COLUMNS = 18;

    private final PanelContext context;
    private final DueWork work;
    private final JPanel view = new JPanel(new BorderLayout());
    private final JTextField field = new JTextField(COLUMNS);
    private final JPanel told = new JPanel(new BorderLayout());
    private String number = "";

    public WhoPanel(PanelContext context, DueWork work) {
        this.context = context;
        this.work = work;
        view.setOpaque(false);
        told.setOpaque(false);
        field.putClientProperty("JTextField.placeholderText", "number, name or place");
        field.addActionListener(event -> tell(field.getText()));
        view.add(
                Form.padded(Form.row(field, Form.button(new PanelAction("Tell", "", () -> tell(field.getText()))))),
                BorderLayout.NORTH);
        view.add(Form.scrolling(told), BorderLayout.CENTER);
        number = context.selected().orElse("");
        refresh();
    }

    @Override
    public JComponent view() {
        return view;
    }

    @Override
    public List<PanelAction> actions() {
        return List.of();
    }

    @Override
    public String subtitle() {
        return number;
    }

    @Override
    public void mark(String selected) {
        tell(selected);
    }

    @Override
    public void refresh() {
        tell(number);
    }

    private void tell(String typed) {
        if (typed.isBlank()) {
            show(
                    List.of(
                            "Select a number anywhere, or type one: its parents, copies, places, scores and decisions are told here."));
            return;
        }
        number = typed.strip();
        Program program = context.program();
        context.work("Looking up " + number, progress -> lines(program, number), this::show);
    }

    private List<String> lines(Program program, String typed) {
        Looked looked = new Lookup(program).look(typed);
        if (looked instanceof Looked.Found found) {
            Story story = new Story(program, found);
            return StoryWords.of(story, work.about(story, context.today()))
                    .lines()
                    .toList();
        }
        if (looked instanceof Looked.Several several) {
            return List.of("Several are called " + several.name() + ": " + String.join(", ", several.keys()));
        }
        Looked.Missing missing = (Looked.Missing) looked;
        String near =
                missing.nearest().isEmpty() ? "" : " Near it on file: " + String.join(", ", missing.nearest()) + ".";
        return List.of(missing.typed() + ": " + missing.because() + "." + near);
    }

    /** The first line and those that stand at the margin are headings; what belongs to them is indented. */
    private void show(List<String> lines) {
        JPanel column = Form.column();
        boolean only = lines.size() == 1;
        for (String line : lines) {
            boolean heading = !only && !line.startsWith(" ");
            put(
                    column,
                    heading
                            ? Form.heading(line)
                            : Form.sentences(line.strip(), context.palette().text()));
        }
        told.removeAll();
        told.add(Form.padded(column), BorderLayout.NORTH);
        told.revalidate();
        told.repaint();
    }

    private static void put(JPanel column, Component part) {
        column.add(part);
        column.add(Box.createVerticalStrut(GAP));
    }

    @Override
    public void close() {
        view.removeAll();
    }
}
