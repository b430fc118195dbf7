package pippinry.workbench.internal.view;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.Box;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollBar;
import javax.swing.JViewport;
import javax.swing.text.JTextComponent;

/** Looks over a laid-out component for what a person could not read. */
final class Legibility {

    /** A key that was never put into words, such as {@code crosses.make} or {@code MAKE_CROSS}. */
    private static final String RAW_KEY = "[a-z]+(\\.[a-z_]+)+|[A-Z]+(_[A-Z]+)+";

    private final List<String> faults = new ArrayList<>();

    static List<String> faults(Container root) {
        Legibility legibility = new Legibility();
        legibility.look(root, false);
        return legibility.faults;
    }

    private void look(Component component, boolean scrolled) {
        if (!component.isVisible() || component instanceof Box.Filler || component instanceof JScrollBar) {
            return;
        }
        if (component instanceof JLabel || component instanceof AbstractButton) {
            lookAtWords((JComponent) component, words(component));
        }
        boolean leaf = !(component instanceof Container container) || container.getComponentCount() == 0;
        if (leaf && !scrolled && nothingToSee(component.getSize()) && !isEmptyHolder(component)) {
            faults.add(component.getClass().getSimpleName() + " '" + words(component) + "' has no size");
        }
        if (component instanceof Container container) {
            for (Component child : container.getComponents()) {
                look(child, scrolled || container instanceof JViewport);
            }
        }
    }

    private void lookAtWords(JComponent component, String words) {
        if (words.isEmpty()) {
            return;
        }
        if (words.matches(RAW_KEY)) {
            faults.add("'" + words + "' is a key, not words");
        }
        if (component.getWidth() > 0 && component.getWidth() < component.getPreferredSize().width) {
            faults.add("'" + words + "' is cut off: " + component.getWidth() + " of "
                    + component.getPreferredSize().width + " wide");
        }
    }

    private static String words(Component component) {
        String words = component instanceof JLabel label
                ? label.getText()
                : component instanceof AbstractButton button ? button.getText() : "";
        return words == null ? "" : words;
    }

    private static boolean nothingToSee(Dimension size) {
        return size.width == 0 || size.height == 0;
    }

    /** An empty panel, and a place for words that has none yet, take no room by right. */
    private static boolean isEmptyHolder(Component component) {
        return component instanceof JPanel
                || component instanceof JLabel && words(component).isEmpty()
                || component instanceof JTextComponent text
                        && !text.isEditable()
                        && text.getText().isEmpty();
    }
}
