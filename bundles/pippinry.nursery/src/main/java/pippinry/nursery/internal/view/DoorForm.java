package pippinry.nursery.internal.view;

import java.awt.BorderLayout;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JPanel;
import pippinry.panels.Panel;
import pippinry.panels.PanelAction;
import pippinry.panels.PanelContext;

/** A form behind a door: first the questions, then what they came to. What a person has typed stays when the program changes. */
abstract class DoorForm implements Panel {

    protected final PanelContext context;
    protected final Runnable back;
    private final JPanel view = new JPanel(new BorderLayout());

    DoorForm(PanelContext context, Runnable back) {
        this.context = context;
        this.back = back;
        view.setOpaque(false);
    }

    protected final void show(JComponent component) {
        view.removeAll();
        view.add(component, BorderLayout.NORTH);
        view.revalidate();
        view.repaint();
    }

    @Override
    public final JComponent view() {
        return view;
    }

    @Override
    public final List<PanelAction> actions() {
        return List.of();
    }

    @Override
    public final void refresh() {
        // The questions do not depend on what is on file.
    }

    @Override
    public final void close() {
        view.removeAll();
    }
}
