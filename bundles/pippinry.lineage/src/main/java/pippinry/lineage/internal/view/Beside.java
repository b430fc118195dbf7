package pippinry.lineage.internal.view;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.util.List;
import java.util.Optional;
import javax.swing.Box;
import javax.swing.JPanel;
import pippinry.lineage.internal.kin.Relatives.Told;
import pippinry.panels.Form;
import pippinry.panels.Palette;
import pippinry.panels.PanelAction;
import pippinry.panels.PictureView;

/** What stands beside the chart: the selected one in words, and the square of chosen parents. */
final class Beside extends JPanel {

    private static final long serialVersionUID = 1;
    private static final int GAP = 6;
    private static final Dimension SQUARE = new Dimension(340, 340);

    private final transient Palette palette;

    Beside(Palette palette) {
        super(new BorderLayout());
        this.palette = palette;
        setOpaque(false);
    }

    void show(Optional<Told> told, Optional<HeatMap> square, List<PanelAction> buttons) {
        JPanel column = Form.column();
        told.ifPresentOrElse(
                known -> tell(column, known),
                () -> put(column, Form.sentences("Select a number, and its line is told here.", palette.quiet())));
        square.filter(map -> map.names().size() > 1).ifPresent(map -> {
            put(column, Form.heading("How the chosen parents are related"));
            put(
                    column,
                    Form.sentences(
                            "Coancestry of each two, which is the inbreeding of their seedlings; founders are taken as unrelated.",
                            palette.quiet()));
            PictureView drawn = new PictureView(map, SQUARE, map.words());
            drawn.setAlignmentX(Component.LEFT_ALIGNMENT);
            drawn.setMaximumSize(new Dimension(Integer.MAX_VALUE, SQUARE.height));
            put(column, drawn);
        });
        if (!buttons.isEmpty()) {
            put(column, Form.row(buttons.stream().map(Form::button).toArray(Component[]::new)));
        }
        removeAll();
        add(Form.padded(column), BorderLayout.NORTH);
        revalidate();
        repaint();
    }

    private void tell(JPanel column, Told told) {
        put(column, Form.heading(told.name().isBlank() ? told.title() : told.title() + "  " + told.name()));
        told.facts().forEach(fact -> put(column, Form.sentences(fact, palette.text())));
        told.doubts().forEach(doubt -> put(column, Form.sentences("? " + doubt, palette.warning())));
        if (told.doubts().isEmpty()) {
            put(column, Form.sentences("Nothing on file speaks against its line.", palette.quiet()));
        }
    }

    private static void put(JPanel column, Component part) {
        column.add(part);
        column.add(Box.createVerticalStrut(GAP));
    }
}
