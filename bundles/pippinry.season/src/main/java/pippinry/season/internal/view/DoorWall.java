package pippinry.season.internal.view;

import java.awt.BorderLayout;
import java.awt.GridLayout;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import pippinry.panels.Door;
import pippinry.panels.Form;
import pippinry.panels.Palette;
import pippinry.panels.PanelAction;

/** What an empty program shows: one card for each way in. */
final class DoorWall extends JPanel {

    private static final long serialVersionUID = 1;
    private static final int GAP = 16;

    DoorWall(List<Door> doors, Palette palette, Consumer<Door> open) {
        super(new BorderLayout());
        setOpaque(false);
        JPanel cards = new JPanel(new GridLayout(1, 0, GAP, GAP));
        cards.setOpaque(false);
        doors.forEach(door -> cards.add(card(door, palette, open)));
        String first = doors.isEmpty()
                ? "This program is empty. Bring records in with 'pippinry import'; the modules that offer a first step are not there."
                : "This program is empty. What do you have?";
        JPanel top = Form.column(Form.heading(first), cards);
        add(Form.padded(top), BorderLayout.NORTH);
    }

    private static JPanel card(Door door, Palette palette, Consumer<Door> open) {
        JPanel card = new JPanel(new BorderLayout(0, GAP / 2));
        card.setBackground(palette.card());
        card.setBorder(BorderFactory.createCompoundBorder(
                BorderFactory.createLineBorder(palette.line()), BorderFactory.createEmptyBorder(GAP, GAP, GAP, GAP)));
        card.add(Form.sentences(door.words(), palette.quiet()), BorderLayout.CENTER);
        card.add(
                Form.row(Form.mainButton(new PanelAction(door.title(), "", () -> open.accept(door)))),
                BorderLayout.SOUTH);
        return card;
    }
}
