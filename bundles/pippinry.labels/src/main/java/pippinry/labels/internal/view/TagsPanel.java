package pippinry.labels.internal.view;

import java.awt.BorderLayout;
import java.awt.GraphicsEnvironment;
import java.awt.Toolkit;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSpinner;
import javax.swing.SpinnerNumberModel;
import pippinry.labels.internal.wanted.TagKind;
import pippinry.labels.internal.wanted.Wish;
import pippinry.model.ask.HouseRates;
import pippinry.panels.Form;
import pippinry.panels.Panel;
import pippinry.panels.PanelAction;
import pippinry.panels.PanelContext;

/** What waits for a tag, the sheet as it will be printed at true size, and the button to print it. */
public final class TagsPanel implements Panel {

    private static final int NEUTRAL = 40;
    private static final int FINER = 2;
    private static final int SCREEN_DPI = 96;

    private final PanelContext context;
    private final Optional<HouseRates> rates;
    private final JPanel view = new JPanel(new BorderLayout());
    private final JComboBox<TagChoice> choices = new JComboBox<>();
    private final SheetForm sheet = new SheetForm(this::show);
    private final JSpinner page = new JSpinner(new SpinnerNumberModel(1, 1, 9999, 1));
    private final JLabel about = new JLabel();
    private final Preview preview;
    private final List<PanelAction> actions = List.of(
            new PanelAction("Print tags", "ctrl P", this::print), new PanelAction("Print a test page", "", this::test));
    private boolean filling;
    private int asked;

    public TagsPanel(PanelContext context, Optional<HouseRates> rates) {
        this.context = context;
        this.rates = rates;
        this.preview = new Preview(context.palette());
        view.setOpaque(false);
        view.add(Form.padded(top()), BorderLayout.NORTH);
        view.add(new JScrollPane(preview), BorderLayout.CENTER);
        choices.addActionListener(event -> show());
        page.addChangeListener(event -> show());
        actions.forEach(action -> Form.bind(view, action));
        refresh();
    }

    private JComponent top() {
        JPanel buttons =
                Form.row(Form.mainButton(actions.get(0)), Form.button(actions.get(1)), Form.label("page"), page, about);
        about.setForeground(context.palette().quiet());
        return Form.column(Form.row(choices), sheet.view(), buttons);
    }

    @Override
    public JComponent view() {
        return view;
    }

    @Override
    public List<PanelAction> actions() {
        return actions;
    }

    @Override
    public void refresh() {
        Wish wish = Wish.of(context.program(), context.today()).with(rates);
        context.work("Look what waits for a tag", progress -> TagChoice.of(wish, NEUTRAL), this::fill);
    }

    private void fill(List<TagChoice> found) {
        filling = true;
        int marked = Math.max(0, choices.getSelectedIndex());
        choices.removeAllItems();
        found.forEach(choices::addItem);
        choices.setSelectedIndex(Math.min(marked, choices.getItemCount() - 1));
        filling = false;
        show();
    }

    private void show() {
        TagChoice choice = (TagChoice) choices.getSelectedItem();
        if (filling || choice == null) {
            return;
        }
        int mine = ++asked;
        try {
            PreviewWish wish = new PreviewWish(
                    choice.tags().tags(),
                    sheet.placing(),
                    sheet.style(),
                    (Integer) page.getValue(),
                    screenDpi() * FINER);
            context.work("Draw the sheet", progress -> wish.make(), shown -> show(mine, shown));
        } catch (IllegalArgumentException e) {
            show(mine, new PreviewWish.Shown(Optional.empty(), e.getMessage()));
        }
    }

    /** An answer to an older question is dropped. */
    private void show(int answered, PreviewWish.Shown shown) {
        if (answered == asked) {
            shown.image().ifPresentOrElse(image -> preview.show(image, FINER), preview::showNothing);
            about.setText(shown.words());
        }
    }

    /** A painted panel has no screen: it takes the usual 96 dots for an inch. */
    private static float screenDpi() {
        return GraphicsEnvironment.isHeadless()
                ? SCREEN_DPI
                : Math.max(SCREEN_DPI, Toolkit.getDefaultToolkit().getScreenResolution());
    }

    private void print() {
        TagChoice choice = (TagChoice) choices.getSelectedItem();
        if (choice != null) {
            context.chooseFile("Print tags to a file", "tags-" + choice.kind().word() + ".pdf")
                    .ifPresent(file -> context.run(command(choice, file)));
        }
    }

    private List<String> command(TagChoice choice, Path file) {
        List<String> command =
                new ArrayList<>(List.of("tags", "--for", choice.kind().word()));
        command.addAll(sheet.options());
        command.addAll(List.of("--record", "--out", file.toString()));
        if (choice.waiting()) {
            command.add("--waiting");
        }
        if (choice.kind() == TagKind.NEUTRAL) {
            command.addAll(List.of("--count", String.valueOf(NEUTRAL)));
        }
        return command;
    }

    private void test() {
        String name = sheet.format().name();
        context.chooseFile("Print a test page to a file", "test-" + name + ".pdf")
                .ifPresent(file -> context.run(List.of("tags", "--test", "--sheet", name, "--out", file.toString())));
    }

    @Override
    public void close() {
        asked++;
        view.removeAll();
    }
}
