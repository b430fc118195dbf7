package pippinry.panels;

import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.Box;
import javax.swing.BoxLayout;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.ScrollPaneConstants;
import javax.swing.SwingConstants;
import javax.swing.table.JTableHeader;
import javax.swing.table.TableCellRenderer;
import javax.swing.table.TableModel;

/** The pieces that panels are built of, so that all look alike. */
public final class Form {

    private static final int GAP = 12;

    private Form() {}

    /** A heading inside a panel. */
    public static JLabel heading(String text) {
        JLabel label = new JLabel(text);
        label.setFont(label.getFont().deriveFont(Font.BOLD, label.getFont().getSize2D() + 1));
        return left(label);
    }

    /** A short text that stays on one line. */
    public static JLabel label(String text) {
        return left(new JLabel(text));
    }

    /** A short text that explains, in the quiet colour. */
    public static JLabel quiet(String text, Palette palette) {
        JLabel label = new JLabel(text);
        label.setForeground(palette.quiet());
        return left(label);
    }

    /** Sentences that wrap at whatever width there is. */
    public static Sentences sentences(String text, Color colour) {
        return new Sentences(text, colour);
    }

    /** The button for what most people come for; one for each panel. */
    public static JButton mainButton(PanelAction action) {
        JButton button = button(action);
        button.putClientProperty("JButton.buttonType", "default");
        button.putClientProperty(
                "FlatLaf.style",
                "background: $Button.default.background; foreground: $Button.default.foreground;"
                        + " borderColor: $Button.default.borderColor; font: semibold");
        return button;
    }

    public static JButton button(PanelAction action) {
        JButton button = new JButton(action.text());
        button.addActionListener(event -> action.work().run());
        return button;
    }

    /** Lets the action's keys work wherever the focus is inside the component. */
    public static void bind(JComponent component, PanelAction action) {
        if (action.keys().isEmpty()) {
            return;
        }
        component
                .getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
                .put(KeyStroke.getKeyStroke(action.keys()), action.text());
        component.getActionMap().put(action.text(), new AbstractAction(action.text()) {
            private static final long serialVersionUID = 1;

            @Override
            public void actionPerformed(ActionEvent event) {
                action.work().run();
            }
        });
    }

    /** Things one under the other, each as wide as the panel. */
    public static JPanel column(Component... parts) {
        JPanel column = new JPanel();
        column.setLayout(new BoxLayout(column, BoxLayout.Y_AXIS));
        column.setOpaque(false);
        for (Component part : parts) {
            column.add(part);
            column.add(Box.createVerticalStrut(GAP / 2));
        }
        return left(column);
    }

    /** Things side by side from the left, each as wide as it likes; in more than one line where there is little width. */
    public static JPanel row(Component... parts) {
        JPanel row = new JPanel(new Flowing(GAP / 2)) {
            private static final long serialVersionUID = 1;

            @Override
            public Dimension getMaximumSize() {
                return new Dimension(Integer.MAX_VALUE, getPreferredSize().height);
            }
        };
        row.setOpaque(false);
        for (Component part : parts) {
            row.add(part);
        }
        return left(row);
    }

    /** A table whose headers stand as their columns do: numbers to the right, words to the left. */
    public static JTable table(TableModel model) {
        JTable table = new JTable(model);
        table.setFillsViewportHeight(true);
        JTableHeader header = table.getTableHeader();
        header.setReorderingAllowed(false);
        TableCellRenderer usual = header.getDefaultRenderer();
        header.setDefaultRenderer((of, value, marked, focused, row, column) -> {
            Component cell = usual.getTableCellRendererComponent(of, value, marked, focused, row, column);
            if (cell instanceof JLabel label) {
                boolean number = Number.class.isAssignableFrom(of.getColumnClass(column));
                label.setHorizontalAlignment(number ? SwingConstants.RIGHT : SwingConstants.LEFT);
            }
            return cell;
        });
        return table;
    }

    /** Two things with a divider between that a person can drag. @param share of the first when there is more room */
    public static JSplitPane split(int orientation, JComponent first, JComponent second, double share) {
        JSplitPane split = new JSplitPane(orientation, first, second);
        split.setResizeWeight(share);
        split.setOpaque(false);
        split.setBorder(BorderFactory.createEmptyBorder());
        // Between cards lies the ground; within a card there is only room.
        split.putClientProperty("FlatLaf.style", "dividerSize: 8; background: $Panel.background");
        return split;
    }

    /** A view that scrolls up and down only. */
    public static JScrollPane scrolling(JComponent view) {
        JPanel top = new WidthOfViewport(view);
        JScrollPane pane = new JScrollPane(
                top, ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        pane.setBorder(BorderFactory.createEmptyBorder());
        pane.getViewport().setOpaque(false);
        pane.setOpaque(false);
        pane.getVerticalScrollBar().setUnitIncrement(GAP * 2);
        return pane;
    }

    /** The frame of a panel's content: room around it. */
    public static JPanel padded(JComponent content) {
        JPanel padded = new JPanel(new BorderLayout());
        padded.setOpaque(false);
        padded.setBorder(BorderFactory.createEmptyBorder(GAP, GAP, GAP, GAP));
        padded.add(content);
        return padded;
    }

    /** What a panel shows while it has nothing to show: what to do first, and the button to do it. */
    public static JPanel nothingYet(String what, Palette palette, PanelAction... first) {
        JPanel column = column(sentences(what, palette.quiet()));
        JPanel buttons = row();
        for (int i = 0; i < first.length; i++) {
            buttons.add(i == 0 ? mainButton(first[i]) : button(first[i]));
        }
        column.add(buttons);
        return padded(column);
    }

    private static <C extends JComponent> C left(C component) {
        component.setAlignmentX(Component.LEFT_ALIGNMENT);
        return component;
    }
}
