package pippinry.nursery.internal.view;

import java.awt.Dimension;
import java.util.List;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextField;
import pippinry.nursery.internal.start.SeedlingsOnHand;
import pippinry.panels.Form;
import pippinry.panels.PanelAction;
import pippinry.panels.PanelContext;
import pippinry.panels.PictureView;

/** Asks the least about seedlings that stand there already, and leaves numbers, tags, a map and a score sheet. */
final class SeedlingsForm extends DoorForm {

    private static final Dimension MAP = new Dimension(640, 150);

    private final JTextField mother;
    private final JComboBox<String> from;
    private final JTextField year;
    private final JTextField count;
    private final JTextField row;

    SeedlingsForm(PanelContext context, Runnable back) {
        super(context, back);
        Fields fields = new Fields();
        mother = fields.text("Mother", "", "name or number; leave empty if unknown");
        from = fields.put(
                "Where the seed came from",
                new JComboBox<>(new String[] {"our own tree", "a bought apple", "not known"}));
        year = fields.text(
                "Year they were sown", Integer.toString(context.today().getYear() - 1), "2024");
        count = fields.text("How many", "30", "30");
        row = fields.text("In which row", "1", "leave empty if they stand in pots");
        PanelAction give = new PanelAction("Give them numbers", "ctrl ENTER", this::give);
        PanelAction leave = new PanelAction("Back", "ESCAPE", back);
        Form.bind(view(), give);
        Form.bind(view(), leave);
        show(Form.column(
                Form.heading("Seedlings that stand there already"),
                Form.sentences(
                        "Their fathers, goals and S-alleles can wait until they are needed.",
                        context.palette().quiet()),
                fields,
                Form.row(Form.mainButton(give), Form.button(leave))));
    }

    private void give() {
        try {
            SeedlingsOnHand asked = new SeedlingsOnHand(
                    mother.getText(),
                    from.getSelectedIndex() == 1,
                    Numbers.whole(year.getText(), "The year they were sown"),
                    Numbers.whole(count.getText(), "How many"),
                    row.getText());
            SeedlingsOnHand.Plan plan = asked.in(context.program(), context.author());
            if (context.apply(plan.edit())) {
                show(given(plan));
            }
        } catch (IllegalArgumentException e) {
            context.say(e.getMessage());
        }
    }

    private JComponent given(SeedlingsOnHand.Plan plan) {
        List<String> numbers = plan.numbers().numbers();
        String first = numbers.get(0);
        String last = numbers.get(numbers.size() - 1);
        String skipped = plan.numbers().skipped().isEmpty()
                ? ""
                : " " + plan.numbers().skipped().size()
                        + " numbers between were passed over: their check character cannot be written.";
        JPanel column = Form.column(
                Form.heading(numbers.size() + " seedlings are on file: " + first + " to " + last),
                Form.sentences(
                        "The plants on their own roots are copies A." + skipped,
                        context.palette().text()));
        if (plan.firstPlace() > 0) {
            RowMap map = new RowMap(plan, context.palette());
            column.add(new PictureView(map, MAP, map.words()));
        }
        column.add(Form.row(
                Form.mainButton(new PanelAction("Print tags", "", () -> print(plan, "tags"))),
                Form.button(new PanelAction("Print a score sheet", "", () -> print(plan, "sheets"))),
                Form.button(new PanelAction("Save the map of the row", "", () -> saveMap(plan))),
                Form.button(new PanelAction("See what is due", "", back))));
        column.add(Form.sentences(
                "Next: hang a tag at each today, walking the row in the order of the map, and a second one of another"
                        + " material at the base. A tag that is lost is then answered from the row.",
                context.palette().quiet()));
        return column;
    }

    private void print(SeedlingsOnHand.Plan plan, String what) {
        context.chooseFile("Print to a file", plan.family() + "-" + what + ".pdf")
                .ifPresent(file -> context.run(Papers.command(plan, what, file)));
    }

    private void saveMap(SeedlingsOnHand.Plan plan) {
        context.chooseFile("Save the map of the row", plan.family() + "-row.png")
                .ifPresent(file -> context.say(RowMap.save(plan, file)));
    }
}
