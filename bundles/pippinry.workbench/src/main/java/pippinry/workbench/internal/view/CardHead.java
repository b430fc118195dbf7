package pippinry.workbench.internal.view;

import io.github.andrewauclair.moderndocking.ui.DockingHeaderUI;
import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import pippinry.panels.Palette;

/** The head of a panel that stands alone in its spot; several in one spot have tabs instead. */
final class CardHead extends JPanel implements DockingHeaderUI {

    private static final long serialVersionUID = 1;
    private static final int HEIGHT = 38;
    private static final int GAP = 10;

    private final JLabel name;

    CardHead(String title, CardTail tail, Palette palette) {
        super(new BorderLayout());
        name = new JLabel(title);
        name.setFont(name.getFont().deriveFont(Font.BOLD, name.getFont().getSize2D() + 1));
        setBackground(palette.card());
        setBorder(BorderFactory.createCompoundBorder(
                BorderFactory.createMatteBorder(0, 0, 1, 0, palette.line()),
                BorderFactory.createEmptyBorder(0, GAP, 0, 0)));
        setPreferredSize(new Dimension(0, HEIGHT));
        add(name, BorderLayout.WEST);
        add(tail, BorderLayout.CENTER);
    }

    @Override
    public void update() {
        // Nothing of it changes when the panel is moved.
    }

    @Override
    public void displaySettingsMenu(JButton button) {
        // The menu hangs on the tail.
    }

    @Override
    public void setBackgroundOverride(Color color) {
        // A head has the colours of its card.
    }

    @Override
    public void setForegroundOverride(Color color) {
        // A head has the colours of its card.
    }
}
