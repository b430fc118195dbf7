package pippinry.labels.internal.view;

import java.awt.BorderLayout;
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
import pippinry.labels.internal.code.Symbology;
import pippinry.labels.internal.paper.Dots;
import pippinry.labels.internal.sheet.SheetFormat;
import pippinry.labels.internal.sheet.SheetFormats;
import pippinry.labels.internal.tag.Placing;
import pippinry.labels.internal.tag.Tag;
import pippinry.labels.internal.tag.TagStyle;
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
    private static final int PREVIEWED = 600;
    private static final int SCREEN_DPI = 96;

    private final PanelContext context;
    private final Optional<HouseRates> rates;
    private final JPanel view = new JPanel(new BorderLayout());
    private final JComboBox<TagChoice> choices = new JComboBox<>();
    private final JComboBox<SheetFormat> sheets = new JComboBox<>();
    private final JComboBox<Symbology> codes = new JComboBox<>(Symbology.values());
    private final JSpinner start = new JSpinner(new SpinnerNumberModel(1, 1, 999, 1));
    private final JSpinner page = new JSpinner(new SpinnerNumberModel(1, 1, 9999, 1));
    private final JLabel about = new JLabel();
    private final Preview preview;
    private final List<PanelAction> actions = List.of(
            new PanelAction("Print tags", "ctrl P", this::print), new PanelAction("Print a test page", "", this::test));
    private boolean filling;

    public TagsPanel(PanelContext context, Optional<HouseRates> rates) {
        this.context = context;
        this.rates = rates;
        this.preview = new Preview(context.palette());
        SheetFormats.shipped().all().forEach(sheets::addItem);
        sheets.setSelectedItem(SheetFormats.shipped().named("A4-21"));
        view.setOpaque(false);
        view.add(Form.padded(top()), BorderLayout.NORTH);
        view.add(new JScrollPane(preview), BorderLayout.CENTER);
        List.of(choices, sheets, codes).forEach(box -> box.addActionListener(event -> show()));
        start.addChangeListener(event -> show());
        page.addChangeListener(event -> show());
        actions.forEach(action -> Form.bind(view, action));
        refresh();
    }

    private JComponent top() {
        JPanel buttons = Form.row(Form.mainButton(actions.get(0)), Form.button(actions.get(1)), about);
        about.setForeground(context.palette().quiet());
        return Form.column(
                Form.row(choices),
                Form.row(sheets, codes, Form.label("first free label"), start, Form.label("page"), page),
                buttons);
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
        Wish all = Wish.of(context.program(), context.today());
        Wish wish = new Wish(
                all.program(),
                all.today(),
                all.year(),
                all.cross(),
                all.block(),
                all.row(),
                all.numbers(),
                all.waiting(),
                all.count(),
                all.flowersPerTag(),
                rates);
        filling = true;
        int marked = Math.max(0, choices.getSelectedIndex());
        choices.removeAllItems();
        TagChoice.of(wish, NEUTRAL).forEach(choices::addItem);
        choices.setSelectedIndex(Math.min(marked, choices.getItemCount() - 1));
        filling = false;
        show();
    }

    private void show() {
        TagChoice choice = (TagChoice) choices.getSelectedItem();
        if (filling || choice == null) {
            return;
        }
        try {
            List<Tag> tags = choice.tags().tags();
            // A preview of the first sheets is enough; all of them are printed.
            PrintedPages pages = PrintedPages.of(tags.subList(0, Math.min(PREVIEWED, tags.size())), placing(), style());
            int shown = Math.min((Integer) page.getValue(), pages.pages());
            preview.show(pages.image(shown - 1, screenDpi() * FINER), FINER);
            int sheetsNeeded = (tags.size() + (Integer) start.getValue() - 2)
                            / placing().format().count()
                    + 1;
            about.setText(tags.size() + " tags on " + sheetsNeeded + (sheetsNeeded == 1 ? " sheet" : " sheets")
                    + "; the preview has true size");
        } catch (IllegalArgumentException e) {
            preview.showNothing();
            about.setText(e.getMessage());
        }
    }

    private Placing placing() {
        SheetFormat format = (SheetFormat) sheets.getSelectedItem();
        return new Placing(
                format, (Integer) start.getValue(), 1, 0, 0, Placing.on(format).marks());
    }

    private TagStyle style() {
        return new TagStyle(
                Optional.of((Symbology) codes.getSelectedItem()),
                new Dots(300),
                TagStyle.usual().readFrom());
    }

    /** A painted panel has no screen: it takes the usual 96 dots for an inch. */
    private static float screenDpi() {
        return java.awt.GraphicsEnvironment.isHeadless()
                ? SCREEN_DPI
                : Math.max(SCREEN_DPI, Toolkit.getDefaultToolkit().getScreenResolution());
    }

    private void print() {
        TagChoice choice = (TagChoice) choices.getSelectedItem();
        if (choice == null) {
            return;
        }
        context.chooseFile("Print tags to a file", "tags-" + choice.kind().word() + ".pdf")
                .ifPresent(file -> context.run(command(choice, file)));
    }

    private List<String> command(TagChoice choice, Path file) {
        List<String> command = new ArrayList<>(List.of(
                "tags",
                "--for",
                choice.kind().word(),
                "--sheet",
                ((SheetFormat) sheets.getSelectedItem()).name(),
                "--code",
                ((Symbology) codes.getSelectedItem()).word(),
                "--start",
                String.valueOf(start.getValue()),
                "--record",
                "--out",
                file.toString()));
        if (choice.waiting()) {
            command.add("--waiting");
        }
        if (choice.kind() == TagKind.NEUTRAL) {
            command.addAll(List.of("--count", String.valueOf(NEUTRAL)));
        }
        return command;
    }

    private void test() {
        String sheet = ((SheetFormat) sheets.getSelectedItem()).name();
        context.chooseFile("Print a test page to a file", "test-" + sheet + ".pdf")
                .ifPresent(file -> context.run(List.of("tags", "--test", "--sheet", sheet, "--out", file.toString())));
    }

    @Override
    public void close() {
        view.removeAll();
    }
}
