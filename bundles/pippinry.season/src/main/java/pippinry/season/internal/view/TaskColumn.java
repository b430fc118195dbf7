package pippinry.season.internal.view;

import java.awt.Component;
import java.util.HashSet;
import java.util.Set;
import java.util.function.BiConsumer;
import javax.swing.BorderFactory;
import javax.swing.Box;
import javax.swing.BoxLayout;
import javax.swing.JLabel;
import javax.swing.JPanel;
import pippinry.model.record.Outcome;
import pippinry.panels.Form;
import pippinry.panels.PanelContext;
import pippinry.season.internal.due.DueList;
import pippinry.season.internal.due.Entry;
import pippinry.season.internal.due.Group;

/** The tasks one under the other, in groups. */
final class TaskColumn extends JPanel {

    private static final long serialVersionUID = 1;
    private static final int GAP = 12;
    private static final int MOST = 150;

    TaskColumn(DueList list, PanelContext context, BiConsumer<Entry, Outcome> mark) {
        setLayout(new BoxLayout(this, BoxLayout.Y_AXIS));
        setOpaque(false);
        setBorder(BorderFactory.createEmptyBorder(GAP, GAP, GAP, GAP));
        if (list.open().isEmpty()) {
            put(Form.sentences(
                    "Nothing is due in these weeks.", context.palette().text()));
        }
        Set<String> cautioned = new HashSet<>();
        for (Group group : Group.of(list)) {
            put(title(group, context));
            for (Entry entry :
                    group.entries().subList(0, Math.min(MOST, group.entries().size()))) {
                boolean firstTime =
                        entry.task().caution().filter(cautioned::add).isPresent();
                put(new TaskRow(entry, list.today(), firstTime, context, mark));
            }
            if (group.entries().size() > MOST) {
                put(Form.quiet(
                        group.entries().size() - MOST + " more: 'pippinry season' lists all", context.palette()));
            }
        }
        list.missing()
                .forEach(
                        missing -> put(Form.sentences(missing, context.palette().quiet())));
    }

    private static JLabel title(Group group, PanelContext context) {
        JLabel title = Form.heading(group.title() + "  " + group.entries().size());
        if (group.isOverdue()) {
            title.setForeground(context.palette().warning());
        }
        return title;
    }

    private void put(Component part) {
        add(part);
        add(Box.createVerticalStrut(GAP / 2));
    }
}
