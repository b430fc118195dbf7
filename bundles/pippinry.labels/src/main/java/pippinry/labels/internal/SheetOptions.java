package pippinry.labels.internal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;
import pippinry.commandline.CallRefused;
import pippinry.commandline.InputRow;
import pippinry.commandline.InputTable;
import pippinry.labels.internal.sheet.SheetFormat;
import pippinry.labels.internal.sheet.SheetFormats;
import pippinry.labels.internal.sheet.SheetTable;
import pippinry.labels.internal.tag.Marks;
import pippinry.labels.internal.tag.Placing;

/** On which sheet, from which label on, and how far the printer prints beside. */
final class SheetOptions {
    @Option(
            names = "--sheet",
            paramLabel = "NAME",
            defaultValue = "A4-21",
            description = "Sheet of labels, or a roll as roll-57x32 in mm (default ${DEFAULT-VALUE}); see --list.")
    String sheet;

    @Option(
            names = "--own-sheets",
            paramLabel = "FILE.csv",
            description = "Sheets of your own: sheet_id, page_w_mm, page_h_mm, cols, rows, label_w_mm, label_h_mm,"
                    + " left_margin_mm, top_margin_mm, pitch_x_mm, pitch_y_mm, basis.")
    Path ownSheets;

    @Option(
            names = "--start",
            paramLabel = "N",
            defaultValue = "1",
            description = "First free label of the first sheet, counted from 1.")
    int start;

    @Option(
            names = "--copies",
            paramLabel = "N",
            defaultValue = "1",
            description = "Tags of each number, side by side.")
    int copies;

    @Option(
            names = "--offset-x",
            paramLabel = "MM",
            defaultValue = "0",
            description = "Shift everything to the right by so many mm.")
    double offsetX;

    @Option(
            names = "--offset-y",
            paramLabel = "MM",
            defaultValue = "0",
            description = "Shift everything down by so many mm.")
    double offsetY;

    @Option(
            names = "--marks",
            paramLabel = "MARKS",
            defaultValue = "none",
            description = "Lines to cut by: none, corners, outlines.")
    String marks;

    SheetFormats formats() throws CallRefused {
        SheetFormats shipped = SheetFormats.shipped();
        return ownSheets == null ? shipped : shipped.with(own());
    }

    private List<SheetFormat> own() throws CallRefused {
        List<SheetFormat> formats = new ArrayList<>();
        try (InputTable table = InputTable.open(ownSheets, "sheet_id", "label_w_mm", "label_h_mm")) {
            while (table.hasNext()) {
                InputRow row = table.next();
                formats.add(SheetTable.row(ownSheets + " line " + row.line(), row::text));
            }
        }
        return formats;
    }

    Placing placing(SheetFormats formats) throws CallRefused {
        Marks drawn = Marks.of(marks)
                .orElseThrow(() -> new CallRefused("--marks " + marks + ": expected none, corners or outlines"));
        return new Placing(formats.named(sheet), start, copies, offsetX, offsetY, drawn);
    }
}
