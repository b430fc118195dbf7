package pippinry.nursery.internal.view;

import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JTextField;
import pippinry.model.value.PartialDate;
import pippinry.nursery.internal.start.SeedOnHand;
import pippinry.panels.Form;
import pippinry.panels.PanelAction;
import pippinry.panels.PanelContext;

/** Asks the least about seed that is there, and says when it must go into the cold. */
final class SeedForm extends DoorForm {

    private static final String[] SOURCES = {"own tree, open pollinated", "bought apple", "gift"};
    private static final String[] KEPT = {"dry", "in the fruit"};

    private final JTextField mother;
    private final JComboBox<String> source;
    private final JTextField harvested;
    private final JTextField seeds;
    private final JComboBox<String> kept;

    SeedForm(PanelContext context, Runnable back) {
        super(context, back);
        Fields fields = new Fields();
        mother = fields.text("Mother", "", "name or number; leave empty if unknown");
        source = fields.put("Where it came from", new JComboBox<>(SOURCES));
        harvested = fields.text(
                "When the fruit was picked", Integer.toString(context.today().getYear()), "2025-10 or about 2025");
        seeds = fields.text("How many full seeds", "20", "20");
        kept = fields.put("How it is kept now", new JComboBox<>(KEPT));
        PanelAction put = new PanelAction("Put the seed on file", "ctrl ENTER", this::put);
        PanelAction leave = new PanelAction("Back", "ESCAPE", back);
        Form.bind(view(), put);
        Form.bind(view(), leave);
        show(Form.column(
                Form.heading("Seed that is there already"),
                fields,
                Form.row(Form.mainButton(put), Form.button(leave))));
    }

    private void put() {
        try {
            SeedOnHand asked = new SeedOnHand(
                    mother.getText(),
                    String.valueOf(source.getSelectedItem()),
                    PartialDate.parse(harvested.getText().strip()),
                    Numbers.whole(seeds.getText(), "How many seeds"),
                    String.valueOf(kept.getSelectedItem()));
            SeedOnHand.Plan plan = asked.in(context.program(), context.author());
            if (context.apply(plan.edit())) {
                show(given(plan));
            }
        } catch (IllegalArgumentException e) {
            context.say(e.getMessage());
        }
    }

    private JComponent given(SeedOnHand.Plan plan) {
        return Form.column(
                Form.heading("The seed is lot " + plan.lot()),
                Form.sentences(
                        "Write " + plan.lot()
                                + " on its bag now. Season says when it goes into the cold and when it is sown.",
                        context.palette().text()),
                Form.sentences(
                        "Caution: apple, pear and plum seeds release cyanide when crushed: do not eat or feed them.",
                        context.palette().warning()),
                Form.row(Form.mainButton(new PanelAction("See what is due", "", back))));
    }
}
