package pippinry.panels;

import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Component;
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
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import javax.swing.ScrollPaneConstants;

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

    /** Sentences that wrap at whatever width there is; can be marked and copied. */
    public static JTextArea sentences(String text, Color colour) {
        JTextArea area = new JTextArea(text);
        area.setEditable(false);
        area.setFocusable(false);
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        area.setOpaque(false);
        area.setBorder(BorderFactory.createEmptyBorder());
        area.setForeground(colour);
        return left(area);
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

    /** Things side by side from the left, each as wide as it likes. */
    public static JPanel row(Component... parts) {
        JPanel row = new JPanel();
        row.setLayout(new BoxLayout(row, BoxLayout.X_AXIS));
        row.setOpaque(false);
        for (Component part : parts) {
            row.add(part);
            row.add(Box.createHorizontalStrut(GAP / 2));
        }
        row.add(Box.createHorizontalGlue());
        return left(row);
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
            buttons.add(i == 0 ? mainButton(first[i]) : button(first[i]), i * 2);
            buttons.add(Box.createHorizontalStrut(GAP / 2), i * 2 + 1);
        }
        column.add(buttons);
        return padded(column);
    }

    private static <C extends JComponent> C left(C component) {
        component.setAlignmentX(Component.LEFT_ALIGNMENT);
        return component;
    }
}
