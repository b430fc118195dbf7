package pippinry.season.internal.view;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.time.LocalDate;
import java.util.function.BiConsumer;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.border.Border;
import pippinry.model.record.Outcome;
import pippinry.panels.Form;
import pippinry.panels.Palette;
import pippinry.panels.PanelAction;
import pippinry.panels.PanelContext;
import pippinry.season.internal.due.Entry;
import pippinry.season.internal.due.Words;

/** One task: what, for which batch, how many and why now, and two buttons. Enter says done, Delete skips. */
final class TaskRow extends JPanel {

    private static final long serialVersionUID = 1;
    private static final int GAP = 8;

    private final transient Palette palette;

    TaskRow(Entry entry, LocalDate today, boolean showCaution, PanelContext context, BiConsumer<Entry, Outcome> mark) {
        super(new BorderLayout(GAP, 0));
        this.palette = context.palette();
        setAlignmentX(Component.LEFT_ALIGNMENT);
        setBackground(palette.card());
        setBorder(frame(false));
        setFocusable(true);
        add(words(entry, today, showCaution), BorderLayout.CENTER);
        PanelAction done = new PanelAction("Done", "ENTER", () -> mark.accept(entry, Outcome.DONE));
        PanelAction skip = new PanelAction("Skip", "DELETE", () -> mark.accept(entry, Outcome.SKIPPED));
        JPanel buttons = new JPanel(new BorderLayout());
        buttons.setOpaque(false);
        buttons.add(Form.row(Form.button(done), Form.button(skip)), BorderLayout.NORTH);
        add(buttons, BorderLayout.EAST);
        Form.bind(this, done);
        Form.bind(this, skip);
        listen(entry, context);
    }

    private JPanel words(Entry entry, LocalDate today, boolean showCaution) {
        JPanel words = new JPanel();
        words.setLayout(new javax.swing.BoxLayout(words, javax.swing.BoxLayout.Y_AXIS));
        words.setOpaque(false);
        words.add(Form.sentences(entry.task().text(), palette.text()));
        String when = entry.task().batch() + " - " + Words.when(entry, today);
        String detail = entry.task().detail().isBlank()
                ? when
                : when + " - " + entry.task().detail();
        words.add(Form.sentences(detail, palette.quiet()));
        if (showCaution) {
            words.add(Form.sentences("Caution: " + entry.task().caution().orElse(""), palette.warning()));
        }
        return words;
    }

    private void listen(Entry entry, PanelContext context) {
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                setBorder(frame(true));
                scrollRectToVisible(new java.awt.Rectangle(getSize()));
            }

            @Override
            public void focusLost(FocusEvent event) {
                setBorder(frame(false));
            }
        });
        addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                requestFocusInWindow();
                context.select(entry.task().batch());
            }
        });
    }

    private Border frame(boolean marked) {
        return BorderFactory.createCompoundBorder(
                BorderFactory.createLineBorder(marked ? palette.accent() : palette.line(), 1, true),
                BorderFactory.createEmptyBorder(GAP, GAP, GAP, GAP));
    }

    /** As wide as there is room, never higher than its words. */
    @Override
    public Dimension getMaximumSize() {
        return new Dimension(Integer.MAX_VALUE, getPreferredSize().height);
    }
}
