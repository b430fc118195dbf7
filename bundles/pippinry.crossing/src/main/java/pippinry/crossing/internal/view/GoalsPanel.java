package pippinry.crossing.internal.view;

import java.awt.BorderLayout;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextField;
import pippinry.crossing.internal.Packs;
import pippinry.crossing.internal.genes.GoalReading;
import pippinry.crossing.internal.goals.GoalReach;
import pippinry.model.Edit;
import pippinry.model.Row;
import pippinry.model.record.Direction;
import pippinry.model.record.Goal;
import pippinry.model.record.GoalKind;
import pippinry.model.record.Kinds;
import pippinry.model.value.Decimal;
import pippinry.panels.Form;
import pippinry.panels.Panel;
import pippinry.panels.PanelAction;
import pippinry.panels.PanelContext;
import pippinry.traits.CropPack;
import pippinry.traits.TraitDefinition;

/** What the program is for: the musts with their thresholds, the wishes with their weights, and who comes closest so far. */
public final class GoalsPanel implements Panel {

    private static final int SHORT = 6;

    private final PanelContext context;
    private final Packs packs;
    private final JPanel view = new JPanel(new BorderLayout());
    private final JComboBox<TraitChoice> trait = new JComboBox<>();
    private final JComboBox<String> kind = new JComboBox<>(new String[] {"must", "wish"});
    private final JComboBox<String> direction = new JComboBox<>(new String[] {"more", "less", "near"});
    private final JTextField threshold = new JTextField(SHORT);
    private final JTextField weight = new JTextField(SHORT);
    private final List<PanelAction> actions =
            List.of(new PanelAction("Put this goal on file", "ctrl ENTER", this::put));

    /** A trait as it is chosen. */
    private record TraitChoice(String code, String name, String unit) {
        @Override
        public String toString() {
            return unit.isBlank() ? name : name + " (" + unit + ")";
        }
    }

    public GoalsPanel(PanelContext context, Packs packs) {
        this.context = context;
        this.packs = packs;
        view.setOpaque(false);
        actions.forEach(action -> Form.bind(view, action));
        fillTraits();
        refresh();
    }

    private void fillTraits() {
        pack().map(CropPack::traits).orElse(List.of()).stream()
                .map(some -> new TraitChoice(some.code(), some.name(), some.unit()))
                .sorted(java.util.Comparator.comparing(TraitChoice::name))
                .forEach(trait::addItem);
        context.program().table(Kinds.TRAITS).stream()
                .map(own -> new TraitChoice(
                        own.code().text(), own.name().isBlank() ? own.code().text() : own.name(), own.unit()))
                .forEach(trait::addItem);
    }

    private Optional<CropPack> pack() {
        return packs.of(context.program());
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
        List<Row<Goal>> goals = context.program().table(Kinds.GOALS).rows();
        JPanel column = Form.column();
        if (goals.isEmpty()) {
            put(
                    column,
                    Form.sentences(
                            "No goals yet. Two or three musts - what a seedling must reach to be kept - and a few wishes with weights are"
                                    + " enough; then Crosses ranks the pairs by them.",
                            context.palette().quiet()));
        }
        addAll(column, "Musts", goals, GoalKind.MUST);
        addAll(column, "Wishes", goals, GoalKind.WISH);
        put(column, Form.heading("Another goal"));
        put(column, Form.row(trait));
        put(
                column,
                Form.row(kind, direction, Form.label("threshold"), threshold, Form.label("weight of a wish"), weight));
        put(column, Form.row(Form.mainButton(actions.get(0))));
        view.removeAll();
        view.add(Form.scrolling(Form.padded(column)));
        view.revalidate();
        view.repaint();
    }

    private void addAll(JPanel column, String title, List<Row<Goal>> goals, GoalKind wanted) {
        List<Row<Goal>> some = goals.stream()
                .filter(row -> row.value().kind().orElse(GoalKind.WISH) == wanted)
                .toList();
        if (!some.isEmpty()) {
            put(column, Form.heading(title));
            some.forEach(row -> add(column, row));
        }
    }

    private void add(JPanel column, Row<Goal> row) {
        Goal goal = row.value();
        String weighs = goal.weight().isPresent()
                ? ", weight " + Decimal.write(goal.weight().getAsDouble())
                : "";
        PanelAction out = new PanelAction("Take out", "", () -> takeOut(row));
        put(column, Form.row(Form.label(GoalReading.words(goal, pack()) + weighs), Form.button(out)));
        Optional<GoalReach> reach = GoalReach.of(context.program(), goal);
        boolean unreached = goal.kind().orElse(GoalKind.WISH) == GoalKind.MUST
                && reach.filter(GoalReach::reached).isEmpty();
        put(
                column,
                Form.sentences(
                        words(goal, reach),
                        unreached
                                ? context.palette().warning()
                                : context.palette().quiet()));
        if (!goal.note().isBlank()) {
            put(column, Form.sentences(goal.note(), context.palette().quiet()));
        }
    }

    private String words(Goal goal, Optional<GoalReach> reach) {
        if (reach.isEmpty()) {
            return "Nobody on file was scored for this yet: no cross can be judged by it.";
        }
        GoalReach closest = reach.get();
        String best = String.format(
                Locale.ROOT,
                "%s with a mean of %.1f%s over %s",
                closest.genotype(),
                closest.mean(),
                unit(goal),
                counted(closest.scores(), "score"));
        if (goal.threshold().isEmpty()) {
            return "Furthest so far: " + best + ".";
        }
        return closest.reached()
                ? "Reached by " + counted(closest.reaching(), "genotype") + " on file; furthest: " + best + "."
                : "Nothing on file reaches it yet; closest is " + best + ".";
    }

    private String unit(Goal goal) {
        return pack().flatMap(facts -> facts.trait(goal.trait()))
                .map(TraitDefinition::unit)
                .filter(unit -> !unit.isBlank())
                .map(unit -> " " + unit)
                .orElse("");
    }

    private static String counted(long number, String what) {
        return number + " " + (number == 1 ? what : what + "s");
    }

    private static void put(JPanel column, java.awt.Component part) {
        column.add(part);
        column.add(javax.swing.Box.createVerticalStrut(SHORT));
    }

    private void put() {
        TraitChoice chosen = (TraitChoice) trait.getSelectedItem();
        if (chosen == null) {
            context.say("No crop pack and no trait of your own is there: a goal needs a trait");
            return;
        }
        try {
            Goal goal = new Goal(
                    chosen.code(),
                    Optional.of(kind.getSelectedIndex() == 0 ? GoalKind.MUST : GoalKind.WISH),
                    Arrays.stream(Direction.values())
                            .filter(one -> one.word().equals(direction.getSelectedItem()))
                            .findFirst(),
                    number(threshold.getText(), "threshold"),
                    number(weight.getText(), "weight"),
                    "");
            context.apply(Edit.by(context.author(), "goal " + chosen.name())
                    .put(Kinds.GOALS, goal)
                    .done());
        } catch (IllegalArgumentException e) {
            context.say(e.getMessage());
        }
    }

    private static OptionalDouble number(String typed, String what) {
        if (typed.isBlank()) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(Decimal.read(typed.strip()));
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(
                    "The " + what + ": '" + typed + "' where " + e.getMessage() + " is expected", e);
        }
    }

    private void takeOut(Row<Goal> row) {
        context.apply(Edit.by(context.author(), "goal " + row.value().trait() + " taken out")
                .remove(Kinds.GOALS, row.id())
                .done());
    }

    @Override
    public void close() {
        view.removeAll();
    }
}
