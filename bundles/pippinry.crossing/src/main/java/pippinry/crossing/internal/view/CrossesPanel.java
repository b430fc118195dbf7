package pippinry.crossing.internal.view;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import pippinry.crossing.internal.Packs;
import pippinry.crossing.internal.plan.Funnel;
import pippinry.crossing.internal.plan.MakeCross;
import pippinry.crossing.internal.rank.PairRanking;
import pippinry.crossing.internal.rank.RankedPair;
import pippinry.crossing.internal.rank.Wishes;
import pippinry.model.Program;
import pippinry.model.ask.HouseRates;
import pippinry.model.ask.Relationship;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.value.Code;
import pippinry.panels.Form;
import pippinry.panels.Panel;
import pippinry.panels.PanelAction;
import pippinry.panels.PanelContext;
import pippinry.panels.PictureView;

/** The square of possible pairs, and beside it all that is known of the marked one. */
public final class CrossesPanel implements Panel {

    private static final double SQUARE_SHARE = 0.55;
    private static final double SURE = 0.95;
    private static final int FAMILY = 50;
    private static final int ALL = 4_000;
    private static final Dimension FUNNEL = new Dimension(380, 170);

    private final PanelContext context;
    private final Packs packs;
    private final Optional<Relationship> relationship;
    private final HouseRates rates;
    private final JPanel view = new JPanel(new BorderLayout());
    private final PairSquare square;
    private final JPanel detail = new JPanel(new BorderLayout());
    private final List<PanelAction> actions = List.of(new PanelAction("Make cross", "ctrl M", this::makeCross));
    private PairTable table = PairTable.empty();
    private Optional<RankedPair> shown = Optional.empty();

    public CrossesPanel(PanelContext context, Packs packs, Optional<Relationship> relationship, HouseRates rates) {
        this.context = context;
        this.packs = packs;
        this.relationship = relationship;
        this.rates = rates;
        this.square = new PairSquare(context.palette(), this::choose);
        view.setOpaque(false);
        detail.setOpaque(false);
        actions.forEach(action -> Form.bind(view, action));
        view.add(Form.nothingYet("The pairs are being judged …", context.palette()));
        refresh();
    }

    @Override
    public JComponent view() {
        return view;
    }

    @Override
    public String subtitle() {
        return "seed parents down, pollen parents across; share of seedlings with every must";
    }

    @Override
    public List<PanelAction> actions() {
        return actions;
    }

    @Override
    public void refresh() {
        Program program = context.program();
        context.work(
                "Judging pairs", progress -> ranked(program, done -> progress.at(done, "Judging pairs")), this::show);
    }

    private PairTable ranked(Program program, java.util.function.DoubleConsumer progress) {
        Wishes wishes = new Wishes(List.of(), List.of(), SURE, 1, FAMILY, ALL, true);
        PairRanking ranking = new PairRanking(program, packs.of(program), relationship, wishes);
        List<RankedPair> pairs = ranking.glance(progress);
        return PairTable.of(pairs, ranking.notes(), ranking::complete);
    }

    private void show(PairTable next) {
        table = next;
        view.removeAll();
        if (next.seeds().isEmpty()) {
            view.add(Form.nothingYet(
                    "No two parents are on file yet. A parent is a cultivar, a selection, or a seedling decided on as parent,"
                            + " with a living plant or pollen left. Put two on file, and the pairs are judged here.",
                    context.palette()));
        } else {
            square.show(next);
            JScrollPane pane = new JScrollPane(square);
            pane.getViewport().setBackground(context.palette().card());
            pane.setBorder(BorderFactory.createEmptyBorder());
            JSplitPane split =
                    Form.split(JSplitPane.HORIZONTAL_SPLIT, left(pane), Form.scrolling(detail), SQUARE_SHARE);
            view.add(split);
            square.marked().ifPresent(this::show);
        }
        view.revalidate();
        view.repaint();
    }

    private JComponent left(JScrollPane pane) {
        JPanel left = new JPanel(new BorderLayout(0, 6));
        left.setOpaque(false);
        left.add(pane, BorderLayout.CENTER);
        left.add(
                Form.sentences(
                        "● all pollen works   ◐ half (one S-allele shared)   ○ none   ? not known",
                        context.palette().quiet()),
                BorderLayout.SOUTH);
        return Form.padded(left);
    }

    private void choose(RankedPair pair) {
        context.select(pair.seedParent().text());
        show(pair);
    }

    private void show(RankedPair glanced) {
        context.work("Reckoning flowers", progress -> table.complete().apply(glanced), this::showComplete);
    }

    private void showComplete(RankedPair pair) {
        shown = Optional.of(pair);
        detail.removeAll();
        detail.add(Form.padded(of(pair)), BorderLayout.NORTH);
        detail.revalidate();
        detail.repaint();
    }

    private JPanel of(RankedPair pair) {
        JPanel column = Form.column(
                Form.heading("♀ " + name(pair.seedParent()) + " × ♂ " + name(pair.pollenParent())),
                Form.quiet("rank " + pair.rank() + " of " + table.pairs().size(), context.palette()));
        // Above the reasons, which fill more than a screen.
        put(column, Form.row(Form.mainButton(actions.get(0))));
        pair.reasons()
                .forEach(reason ->
                        put(column, Form.sentences(reason, context.palette().text())));
        Optional<Funnel> funnel = funnel(pair);
        funnel.ifPresent(known -> {
            put(column, Form.heading("From flowers to keepers"));
            FunnelPicture picture = new FunnelPicture(known, context.palette());
            PictureView drawn = new PictureView(picture, FUNNEL, picture.words());
            drawn.setAlignmentX(Component.LEFT_ALIGNMENT);
            put(column, drawn);
        });
        funnel.ifPresent(known -> {
            put(column, Form.heading("Where it comes from"));
            known.grounds()
                    .forEach(ground ->
                            put(column, Form.sentences(ground, context.palette().quiet())));
        });
        table.notes()
                .forEach(note ->
                        put(column, Form.sentences(note, context.palette().quiet())));
        return column;
    }

    private static void put(JPanel column, Component part) {
        column.add(part);
        column.add(javax.swing.Box.createVerticalStrut(6));
    }

    private Optional<Funnel> funnel(RankedPair pair) {
        return pair.flowers()
                .map(flowers -> Funnel.of(
                        context.program(),
                        rates,
                        pair.seedParent(),
                        flowers.high(),
                        pair.share().isPresent() ? Optional.of(pair.share().getAsDouble()) : Optional.empty()));
    }

    private String name(Code<Genotype> code) {
        return context.program()
                .find(Kinds.GENOTYPES, code)
                .map(Genotype::name)
                .filter(known -> !known.isBlank())
                .orElse(code.text());
    }

    private void makeCross() {
        shown.ifPresent(pair -> {
            MakeCross.Plan plan = MakeCross.of(context.program(), pair, context.today(), context.author());
            if (context.apply(plan.edit())) {
                String flowers = pair.flowers()
                        .map(wanted -> wanted.median() + " to " + wanted.high() + " flowers")
                        .orElse("its flowers");
                context.say("Cross " + plan.number() + " is planned for " + flowers + "; its tags wait in Tags.");
            }
        });
    }

    @Override
    public void close() {
        view.removeAll();
    }
}
