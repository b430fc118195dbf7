package pippinry.season.internal.view;

import java.awt.BorderLayout;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import pippinry.model.ask.TaskSource;
import pippinry.model.record.Kinds;
import pippinry.model.record.Outcome;
import pippinry.panels.Door;
import pippinry.panels.Form;
import pippinry.panels.Panel;
import pippinry.panels.PanelAction;
import pippinry.panels.PanelContext;
import pippinry.season.internal.due.DueList;
import pippinry.season.internal.due.Entry;
import pippinry.season.internal.due.Marking;
import pippinry.season.internal.due.Words;

/** What is due, by batch, with the buttons to say it is done; in an empty program, the doors into it. */
public final class SeasonPanel implements Panel {

    private static final int WEEKS = 4;

    private final PanelContext context;
    private final List<TaskSource> sources;
    private final List<Door> doors;
    private final JPanel view = new JPanel(new BorderLayout());
    private Optional<Door> opened = Optional.empty();

    public SeasonPanel(PanelContext context, List<TaskSource> sources, List<Door> doors) {
        this.context = context;
        this.sources = sources;
        this.doors = doors;
        view.setOpaque(false);
        refresh();
    }

    @Override
    public JComponent view() {
        return view;
    }

    @Override
    public String subtitle() {
        LocalDate today = context.today();
        return opened.isPresent() ? "" : Words.date(today) + " to " + Words.date(today.plusWeeks(WEEKS));
    }

    @Override
    public List<PanelAction> actions() {
        List<PanelAction> actions = new ArrayList<>();
        doors.forEach(door -> actions.add(new PanelAction(door.later(), "", () -> open(door))));
        return actions;
    }

    /** A form that somebody is filling in stays as it is. */
    @Override
    public void refresh() {
        if (opened.isEmpty()) {
            show(isEmpty() ? new DoorWall(doors, context.palette(), this::open) : list());
        }
    }

    private boolean isEmpty() {
        return context.program().table(Kinds.GENOTYPES).size() == 0
                && context.program().table(Kinds.SEEDLOTS).size() == 0;
    }

    private JComponent list() {
        LocalDate today = context.today();
        DueList list = DueList.of(context.program(), sources, today, today.plusWeeks(WEEKS));
        return Form.scrolling(new TaskColumn(list, context, this::mark));
    }

    private void mark(Entry entry, Outcome outcome) {
        context.apply(Marking.edit(context.program(), entry, outcome, context.today(), context.author()));
    }

    private void open(Door door) {
        opened = Optional.of(door);
        show(Form.scrolling(Form.padded(door.open(context, this::back).view())));
    }

    private void back() {
        opened = Optional.empty();
        refresh();
    }

    private void show(JComponent component) {
        view.removeAll();
        view.add(component);
        view.revalidate();
        view.repaint();
    }

    @Override
    public void close() {
        view.removeAll();
    }
}
