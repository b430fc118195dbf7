package pippinry.labels.internal.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JSpinner;
import javax.swing.SpinnerNumberModel;
import pippinry.labels.internal.code.Symbology;
import pippinry.labels.internal.paper.Dots;
import pippinry.labels.internal.sheet.SheetFormat;
import pippinry.labels.internal.sheet.SheetFormats;
import pippinry.labels.internal.tag.Marks;
import pippinry.labels.internal.tag.Placing;
import pippinry.labels.internal.tag.TagStyle;
import pippinry.panels.Form;

/** On which sheet, from which label on, how far the printer prints beside, with which code. */
final class SheetForm {

    private static final String USUAL = "A4-21";
    private static final double FARTHEST = 20;
    private static final double STEP = 0.5;
    private static final int PRINTER_DPI = 300;

    private final JComboBox<SheetFormat> sheets = new JComboBox<>();
    private final JComboBox<Symbology> codes = new JComboBox<>(Symbology.values());
    private final JSpinner start = new JSpinner(new SpinnerNumberModel(1, 1, 999, 1));
    private final JSpinner right = offset();
    private final JSpinner down = offset();
    private final JCheckBox corners = new JCheckBox("marks to cut by");

    SheetForm(Runnable changed) {
        SheetFormats shipped = SheetFormats.shipped();
        shipped.all().forEach(sheets::addItem);
        sheets.setSelectedItem(shipped.named(USUAL));
        corners.setOpaque(false);
        List.of(sheets, codes).forEach(box -> box.addActionListener(event -> changed.run()));
        List.of(start, right, down).forEach(spinner -> spinner.addChangeListener(event -> changed.run()));
        corners.addActionListener(event -> changed.run());
    }

    private static JSpinner offset() {
        return new JSpinner(new SpinnerNumberModel(0, -FARTHEST, FARTHEST, STEP));
    }

    JComponent view() {
        return Form.column(
                Form.row(sheets, codes, corners),
                Form.row(
                        Form.label("first free label"),
                        start,
                        Form.label("shift right, mm"),
                        right,
                        Form.label("shift down, mm"),
                        down));
    }

    SheetFormat format() {
        return (SheetFormat) sheets.getSelectedItem();
    }

    /** Throws {@link IllegalArgumentException} when the sheet has no such label, or the shift leaves the page. */
    Placing placing() {
        return new Placing(format(), (Integer) start.getValue(), 1, mm(right), mm(down), marks());
    }

    TagStyle style() {
        return new TagStyle(
                Optional.of((Symbology) codes.getSelectedItem()),
                new Dots(PRINTER_DPI),
                TagStyle.usual().readFrom());
    }

    private Marks marks() {
        return corners.isSelected() ? Marks.CORNERS : Marks.NONE;
    }

    private static double mm(JSpinner spinner) {
        return ((Number) spinner.getValue()).doubleValue();
    }

    /** The same choices as the command {@code tags} takes them. */
    List<String> options() {
        return new ArrayList<>(List.of(
                "--sheet", format().name(),
                "--code", ((Symbology) codes.getSelectedItem()).word(),
                "--start", String.valueOf(start.getValue()),
                "--offset-x", String.valueOf(mm(right)),
                "--offset-y", String.valueOf(mm(down)),
                "--marks", marks().word()));
    }
}
