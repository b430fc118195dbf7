package pippinry.lineage.internal.view;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSpinner;
import javax.swing.JSplitPane;
import javax.swing.SpinnerNumberModel;
import pippinry.lineage.internal.chart.Card;
import pippinry.lineage.internal.chart.Certain;
import pippinry.lineage.internal.chart.Charting;
import pippinry.lineage.internal.chart.LaidOut;
import pippinry.lineage.internal.chart.Layers;
import pippinry.lineage.internal.chart.Wish;
import pippinry.lineage.internal.kin.Kin;
import pippinry.lineage.internal.kin.ParentsInUse;
import pippinry.lineage.internal.kin.Relatives;
import pippinry.model.Program;
import pippinry.model.ask.Descent;
import pippinry.model.ask.Relationship;
import pippinry.model.record.Kinds;
import pippinry.panels.Form;
import pippinry.panels.Panel;
import pippinry.panels.PanelAction;
import pippinry.panels.PanelContext;

/** Who comes from whom: a chart of ancestors and descendants, and beside it what follows from it. */
public final class LineagePanel implements Panel {

    private static final int UP = 3;
    private static final int DOWN = 1;
    private static final int MOST_GENERATIONS = 9;
    private static final int MOST_PARENTS = 10;
    private static final int BESIDE_WIDTH = 370;
    private static final int LEAST_BESIDE = 260;
    private static final int LEAST_CHART = 400;
    private static final double STEP = 1.2;

    private final PanelContext context;
    private final Optional<Relationship> relationship;
    private final Optional<Descent> descent;
    private final JPanel view = new JPanel(new BorderLayout());
    private final ChartView chart;
    private final Beside beside;
    private final JSpinner up = new JSpinner(new SpinnerNumberModel(UP, 0, MOST_GENERATIONS, 1));
    private final JSpinner down = new JSpinner(new SpinnerNumberModel(DOWN, 0, MOST_GENERATIONS, 1));
    private final List<PanelAction> actions = List.of(
            new PanelAction("Around the selection", "ctrl L", this::aroundSelection),
            new PanelAction("Whole program", "ctrl shift L", this::wholeProgram),
            new PanelAction("Fit", "ctrl 0", this::fit),
            new PanelAction("Larger", "ctrl PLUS", () -> zoom(STEP)),
            new PanelAction("Smaller", "ctrl MINUS", () -> zoom(1 / STEP)),
            new PanelAction("Fold families up", "ctrl F", this::foldUp),
            new PanelAction("Save picture", "ctrl S", this::save));
    private final Set<String> parents = new LinkedHashSet<>();
    private Wish wish;
    private Optional<String> selected = Optional.empty();
    private int asked;

    public LineagePanel(PanelContext context, Optional<Relationship> relationship, Optional<Descent> descent) {
        this.context = context;
        this.relationship = relationship;
        this.descent = descent;
        chart = new ChartView(context.palette(), card -> context.select(card.number()), this::open);
        beside = new Beside(context.palette());
        parents.addAll(ParentsInUse.of(context.program(), MOST_PARENTS));
        selected = context.selected().flatMap(this::genotype);
        wish = new Wish(selected, UP, DOWN, Set.of());
        view.setOpaque(false);
        up.addChangeListener(event -> wish(wish.withUp((Integer) up.getValue()), false));
        down.addChangeListener(event -> wish(wish.withDown((Integer) down.getValue()), false));
        actions.forEach(action -> Form.bind(view, action));
        refresh();
    }

    private JComponent content() {
        JPanel left = new JPanel(new BorderLayout(0, 8));
        left.setOpaque(false);
        left.add(controls(), BorderLayout.NORTH);
        left.add(chart, BorderLayout.CENTER);
        left.add(
                Form.sentences(
                        "Full line: to the seed parent. Dashed: to the pollen parent. Dotted: a sport. A wave with ? is in doubt, with × "
                                + "impossible by what was read. Space opens a family or puts a tree in the middle.",
                        context.palette().quiet()),
                BorderLayout.SOUTH);
        JScrollPane right = Form.scrolling(beside);
        right.setPreferredSize(new Dimension(BESIDE_WIDTH, BESIDE_WIDTH));
        right.setMinimumSize(new Dimension(LEAST_BESIDE, 0));
        // Its buttons in one line would want more than there is, and leave nothing for what stands beside.
        left.setPreferredSize(new Dimension(LEAST_CHART, LEAST_CHART));
        // Whatever room there is more goes to the chart.
        return Form.split(JSplitPane.HORIZONTAL_SPLIT, Form.padded(left), right, 1);
    }

    private JComponent controls() {
        List<Component> parts = new ArrayList<>();
        actions.subList(0, 2).forEach(action -> parts.add(Form.button(action)));
        parts.addAll(List.of(Form.label("Ancestors"), up, Form.label("Descendants"), down));
        actions.subList(2, actions.size()).forEach(action -> parts.add(Form.button(action)));
        return Form.row(parts.toArray(Component[]::new));
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
    public String subtitle() {
        int leftOut = chart.chart().chart().leftOut();
        String around = wish.around().map(code -> "around " + code).orElse("all families");
        return leftOut == 0 ? around : around + "; " + leftOut + " more would not fit";
    }

    @Override
    public void refresh() {
        view.removeAll();
        if (context.program().table(Kinds.GENOTYPES).size() == 0) {
            view.add(Form.nothingYet(
                    "Nobody is on file yet. Season has the first steps; who has parents on file is drawn here.",
                    context.palette()));
        } else {
            view.add(content());
            wish(wish, true);
            tell();
        }
        view.revalidate();
        view.repaint();
    }

    @Override
    public void mark(String number) {
        Optional<String> card = card(number);
        selected = genotype(number).or(() -> selected);
        if (card.isEmpty() && selected.isPresent()) {
            wish(wish.around(selected), false);
        }
        chart.select(Optional.of(number), card);
        tell();
    }

    /** The card of a number, or that of the family it stands behind. */
    private Optional<String> card(String number) {
        String wanted = genotype(number).orElse(number);
        return chart.chart().chart().cards().stream()
                .filter(card -> card.number().equals(wanted) || standsBehind(wanted, card))
                .findFirst()
                .map(Card::id);
    }

    private boolean standsBehind(String number, Card card) {
        return card.isFamily()
                && Kin.of(context.program())
                        .family(number)
                        .filter(family -> family.key().equals(card.family()))
                        .isPresent();
    }

    /** The genotype that a number names, be it that of a plant. */
    private Optional<String> genotype(String number) {
        Program program = context.program();
        return program.table(Kinds.GENOTYPES)
                .find(number)
                .map(row -> row.value().code().text())
                .or(() -> program.table(Kinds.PLANTS)
                        .find(number)
                        .flatMap(row -> row.value().genotype())
                        .map(code -> code.text()));
    }

    private void open(Card card) {
        if (card.isFamily()) {
            wish(wish.turning(card.family()), true);
        } else {
            context.select(card.number());
            wish(wish.around(Optional.of(card.number())), false);
        }
    }

    private void aroundSelection() {
        selected.ifPresentOrElse(
                code -> wish(wish.around(Optional.of(code)), false), () -> context.say("No tree is selected yet."));
    }

    private void wholeProgram() {
        wish(wish.around(Optional.empty()), false);
    }

    private void fit() {
        chart.fit();
    }

    private void zoom(double factor) {
        chart.zoom(factor);
    }

    private void foldUp() {
        wish(new Wish(wish.around(), wish.up(), wish.down(), Set.of()), false);
    }

    /** Lays out what is wanted now; what was asked for before and comes late is not shown any more. */
    private void wish(Wish next, boolean stay) {
        wish = next;
        int number = ++asked;
        Program program = context.program();
        context.work(
                "Drawing the lineage",
                progress -> Layers.of(Charting.of(Kin.of(program), next, new Certain(program, descent))),
                laidOut -> {
                    if (number == asked) {
                        show(laidOut, stay);
                    }
                });
    }

    private void show(LaidOut laidOut, boolean stay) {
        chart.show(laidOut, stay);
        chart.select(context.selected(), context.selected().flatMap(this::card));
    }

    private void tell() {
        Program program = context.program();
        Optional<String> code = selected;
        List<String> chosen = parents.stream()
                .filter(parent -> program.table(Kinds.GENOTYPES).find(parent).isPresent())
                .toList();
        context.work(
                "Reckoning relationship",
                progress -> {
                    Relatives relatives = new Relatives(program, relationship, descent);
                    List<String> names = chosen.stream().map(relatives::name).toList();
                    return new Answer(
                            code.flatMap(known -> relatives.of(known, chosen)),
                            relatives.square(chosen).map(square -> new HeatMap(names, square, context.palette())));
                },
                answer -> beside.show(answer.told(), answer.square(), choosing()));
    }

    private record Answer(Optional<Relatives.Told> told, Optional<HeatMap> square) {}

    private List<PanelAction> choosing() {
        return selected.map(code -> parents.contains(code)
                        ? new PanelAction("Take " + code + " out of the square", "", () -> choose(code, false))
                        : new PanelAction("Add " + code + " to the square", "", () -> choose(code, true)))
                .map(List::of)
                .orElse(List.of());
    }

    private void choose(String code, boolean in) {
        if (in) {
            parents.add(code);
        } else {
            parents.remove(code);
        }
        tell();
    }

    private void save() {
        context.chooseFile("Save the chart", "lineage.png")
                .ifPresent(file -> context.work(
                        "Saving the chart",
                        progress -> SavedPicture.save(chart.picture(SavedPicture.paper()), chart.chart(), file),
                        context::say));
    }

    @Override
    public void close() {
        asked++;
        view.removeAll();
    }
}
