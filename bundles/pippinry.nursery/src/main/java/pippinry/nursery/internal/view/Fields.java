package pippinry.nursery.internal.view;

import java.awt.Component;
import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.awt.Insets;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;

/** Questions with a field each, one under the other; Tab goes from one to the next. */
final class Fields extends JPanel {

    private static final long serialVersionUID = 1;
    private static final int GAP = 6;
    private static final int COLUMNS = 24;

    private int rows;

    Fields() {
        super(new GridBagLayout());
        setOpaque(false);
        setAlignmentX(Component.LEFT_ALIGNMENT);
    }

    JTextField text(String question, String value, String hint) {
        JTextField field = new JTextField(value, COLUMNS);
        field.putClientProperty("JTextField.placeholderText", hint);
        put(question, field);
        return field;
    }

    <C extends JComponent> C put(String question, C field) {
        JLabel label = new JLabel(question);
        label.setLabelFor(field);
        add(label, at(0, 0));
        add(field, at(1, 0));
        // What is left of the width stays empty.
        add(new JLabel(), at(2, 1));
        rows++;
        return field;
    }

    private GridBagConstraints at(int column, double weight) {
        return new GridBagConstraints(
                column,
                rows,
                1,
                1,
                weight,
                0,
                GridBagConstraints.WEST,
                weight > 0 ? GridBagConstraints.HORIZONTAL : GridBagConstraints.NONE,
                new Insets(GAP, column == 0 ? 0 : GAP * 2, GAP, 0),
                0,
                0);
    }
}
