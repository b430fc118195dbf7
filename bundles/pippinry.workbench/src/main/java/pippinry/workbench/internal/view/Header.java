package pippinry.workbench.internal.view;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Toolkit;
import java.awt.event.KeyEvent;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.Box;
import javax.swing.BoxLayout;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JToggleButton;
import javax.swing.SwingConstants;
import pippinry.panels.Palette;
import pippinry.panels.PanelProvider.Desk;
import pippinry.workbench.internal.Desks;

/** The top of the window: the program's name and its menu, the desks, the finder, and what can be taken back. */
final class Header extends JPanel {

    private static final long serialVersionUID = 1;
    private static final int FINDER_WIDTH = 330;
    private static final int MOST_WORDS = 28;

    private final JButton program = new JButton();
    private final Map<Desk, JToggleButton> desks = new EnumMap<>(Desk.class);
    private final JButton find = new JButton();
    private final JButton takeBack = new JButton();

    Header(Palette palette, Consumer<Desk> change, Runnable finding, Runnable takingBack) {
        super(new BorderLayout());
        setBorder(BorderFactory.createCompoundBorder(
                BorderFactory.createMatteBorder(0, 0, 1, 0, palette.line()),
                BorderFactory.createEmptyBorder(6, 12, 0, 12)));
        program.setFont(
                program.getFont().deriveFont(Font.BOLD, program.getFont().getSize2D() + 2));
        program.putClientProperty("JButton.buttonType", "borderless");
        program.setToolTipText("What concerns the whole program");
        dressFinder(palette);
        find.addActionListener(event -> finding.run());
        takeBack.putClientProperty("JButton.buttonType", "borderless");
        takeBack.setForeground(palette.accent());
        takeBack.addActionListener(event -> takingBack.run());
        add(left(change), BorderLayout.WEST);
        add(right(), BorderLayout.EAST);
    }

    /** Looks like the field that it opens. */
    private void dressFinder(Palette palette) {
        find.setText("Find a number, a name or an action");
        find.setHorizontalAlignment(SwingConstants.LEFT);
        find.setForeground(palette.quiet());
        find.setBackground(palette.ground());
        JLabel keys = new JLabel(
                KeyEvent.getModifiersExText(Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx()) + " K");
        keys.setForeground(palette.quiet());
        find.setLayout(new BorderLayout());
        find.add(keys, BorderLayout.EAST);
    }

    private JPanel left(Consumer<Desk> change) {
        JPanel left = line();
        left.add(program);
        left.add(Box.createHorizontalStrut(16));
        ButtonGroup group = new ButtonGroup();
        for (Desk desk : Desks.ALL) {
            JToggleButton button = new JToggleButton(Desks.title(desk));
            button.putClientProperty("JButton.buttonType", "tab");
            button.setMnemonic('1' + desk.ordinal());
            button.addActionListener(event -> change.accept(desk));
            group.add(button);
            desks.put(desk, button);
            left.add(button);
        }
        return left;
    }

    private JPanel right() {
        JPanel right = line();
        find.setPreferredSize(new Dimension(FINDER_WIDTH, find.getPreferredSize().height));
        find.setMaximumSize(find.getPreferredSize());
        right.add(find);
        right.add(Box.createHorizontalStrut(12));
        right.add(takeBack);
        return right;
    }

    private static JPanel line() {
        JPanel line = new JPanel();
        line.setLayout(new BoxLayout(line, BoxLayout.X_AXIS));
        line.setAlignmentY(Component.CENTER_ALIGNMENT);
        line.setOpaque(false);
        return line;
    }

    void mark(Desk desk) {
        desks.get(desk).setSelected(true);
    }

    void tell(String name, String undoable) {
        program.setText(name);
        takeBack.setText(undoable.isEmpty() ? "Nothing to take back" : "Take back: " + shortened(undoable));
        takeBack.setToolTipText(undoable.isEmpty() ? null : undoable);
        takeBack.setEnabled(!undoable.isEmpty());
    }

    private static String shortened(String words) {
        return words.length() <= MOST_WORDS
                ? words
                : words.substring(0, MOST_WORDS - 1).strip() + "…";
    }

    void menu(JPopupMenu menu) {
        for (java.awt.event.ActionListener old : program.getActionListeners()) {
            program.removeActionListener(old);
        }
        program.addActionListener(event -> menu.show(program, 0, program.getHeight()));
    }
}
