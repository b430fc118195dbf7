package pippinry.workbench.internal.view;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JFrame;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;

/** One field that finds any number, name or action; Enter takes what is marked. */
final class Finder extends JDialog {

    private static final long serialVersionUID = 1;
    private static final Dimension SIZE = new Dimension(560, 420);

    /**
     * Something that can be chosen.
     *
     * @param words how it reads
     * @param work what choosing it does
     */
    record Choice(String words, Runnable work) {
        @Override
        public String toString() {
            return words;
        }
    }

    private final transient Function<String, List<Choice>> search;
    private final JTextField field = new JTextField();
    private final DefaultListModel<Choice> found = new DefaultListModel<>();
    private final JList<Choice> list = new JList<>(found);

    Finder(JFrame owner, Function<String, List<Choice>> search) {
        super(owner, "Find", true);
        this.search = search;
        field.putClientProperty("JTextField.placeholderText", "Find a number, a name or an action");
        JPanel content = new JPanel(new BorderLayout(0, 8));
        content.setBorder(BorderFactory.createEmptyBorder(12, 12, 12, 12));
        content.add(field, BorderLayout.NORTH);
        content.add(new JScrollPane(list), BorderLayout.CENTER);
        setContentPane(content);
        setSize(SIZE);
        setLocationRelativeTo(owner);
        listen();
        look();
    }

    private void listen() {
        field.getDocument().addDocumentListener(new Typed(typed -> look()));
        bind(KeyEvent.VK_DOWN, () -> mark(1));
        bind(KeyEvent.VK_UP, () -> mark(-1));
        bind(KeyEvent.VK_ENTER, this::take);
        bind(KeyEvent.VK_ESCAPE, this::dispose);
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                take();
            }
        });
    }

    private void bind(int key, Runnable work) {
        JComponent root = getRootPane();
        root.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(key, 0), key);
        root.getActionMap().put(key, new AbstractAction() {
            private static final long serialVersionUID = 1;

            @Override
            public void actionPerformed(ActionEvent event) {
                work.run();
            }
        });
        field.getInputMap().put(KeyStroke.getKeyStroke(key, 0), key);
        field.getActionMap().put(key, root.getActionMap().get(key));
    }

    private void look() {
        found.clear();
        found.addAll(new ArrayList<>(search.apply(field.getText())));
        list.setSelectedIndex(0);
    }

    private void mark(int step) {
        int next = Math.max(0, Math.min(found.size() - 1, list.getSelectedIndex() + step));
        list.setSelectedIndex(next);
        list.ensureIndexIsVisible(next);
    }

    private void take() {
        Choice choice = list.getSelectedValue();
        dispose();
        if (choice != null) {
            SwingUtilities.invokeLater(choice.work());
        }
    }

    /** Tells of every change of a text. */
    record Typed(Consumer<DocumentEvent> listener) implements DocumentListener {
        @Override
        public void insertUpdate(DocumentEvent event) {
            listener.accept(event);
        }

        @Override
        public void removeUpdate(DocumentEvent event) {
            listener.accept(event);
        }

        @Override
        public void changedUpdate(DocumentEvent event) {
            listener.accept(event);
        }
    }
}
