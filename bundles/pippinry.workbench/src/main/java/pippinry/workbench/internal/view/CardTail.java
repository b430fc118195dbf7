package pippinry.workbench.internal.view;

import java.awt.BorderLayout;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JMenuItem;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import pippinry.panels.Palette;
import pippinry.panels.PanelAction;

/** What stands beside a panel's title: a few quiet words, and a menu of what can be done with the panel. */
final class CardTail extends JPanel {

    private static final long serialVersionUID = 1;
    private static final int GAP = 8;

    private final JLabel words = new JLabel();
    private final JButton more = new JButton("⋯");

    CardTail(Palette palette, String title) {
        super(new BorderLayout(GAP, 0));
        setOpaque(false);
        setBorder(BorderFactory.createEmptyBorder(0, GAP, 0, GAP / 2));
        words.setForeground(palette.quiet());
        more.setForeground(palette.quiet());
        more.putClientProperty("JButton.buttonType", "borderless");
        more.setToolTipText("What can be done with this panel");
        more.getAccessibleContext().setAccessibleName("What can be done with " + title);
        add(words, BorderLayout.CENTER);
        add(more, BorderLayout.EAST);
    }

    void tell(String subtitle) {
        words.setText(subtitle);
    }

    /** @param actions asked for each time the menu opens */
    void menu(java.util.function.Supplier<List<PanelAction>> actions) {
        more.addActionListener(event -> {
            JPopupMenu menu = new JPopupMenu();
            for (PanelAction action : actions.get()) {
                JMenuItem item = new JMenuItem(action.text());
                item.addActionListener(chosen -> action.work().run());
                menu.add(item);
            }
            menu.show(more, more.getWidth() - menu.getPreferredSize().width, more.getHeight());
        });
    }
}
