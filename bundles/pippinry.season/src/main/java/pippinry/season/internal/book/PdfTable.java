package pippinry.season.internal.book;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import pippinry.panels.Palette;

/** A table on paper: cells wrap, rows stay whole, and the headers stand again at the top of every page. */
final class PdfTable {

    private static final double SIZE = 8.5;
    private static final double LINE = SIZE * 1.3;
    private static final double GAP = 10;
    private static final double PAD = 3;

    private final Pen pen;

    PdfTable(Pen pen) {
        this.pen = pen;
    }

    void draw(Block.Grid grid) throws IOException {
        int columns = grid.headers().size();
        double[] widths = ColumnWidths.of(
                grid,
                Setting.TEXT_WIDTH - GAP * columns,
                pen.strong().at(SIZE),
                pen.plain().at(SIZE));
        List<List<String>> head = wrapped(grid.headers(), widths, pen.strong());
        pen.ensure(height(head) + 3 * LINE);
        head(grid, head, widths);
        for (List<String> row : grid.rows()) {
            List<List<String>> cells = wrapped(row, widths, pen.plain());
            if (pen.ensure(Math.min(height(cells), Setting.TOP - Setting.BOTTOM - height(head)))) {
                head(grid, head, widths);
            }
            row(grid, cells, widths, pen.plain());
        }
    }

    private void head(Block.Grid grid, List<List<String>> cells, double[] widths) throws IOException {
        pen.box(Palette.light().soft(), Setting.MARGIN, 0, total(widths), height(cells));
        row(grid, cells, widths, pen.strong());
    }

    private void row(Block.Grid grid, List<List<String>> cells, double[] widths, PaperType type) throws IOException {
        double x = Setting.MARGIN + GAP / 2;
        for (int column = 0; column < widths.length; column++) {
            cell(cells.get(column), grid.isNumeric(column), x, widths[column], type);
            x += widths[column] + GAP;
        }
        pen.down(height(cells));
        pen.box(Palette.light().line(), Setting.MARGIN, 0, total(widths), 0.5);
    }

    private void cell(List<String> lines, boolean right, double x, double width, PaperType type) throws IOException {
        double below = PAD + SIZE;
        for (String line : lines) {
            double start = right ? x + width - type.width(line, SIZE) : x;
            pen.text(type, SIZE, Palette.light().text(), line, start, below);
            below += LINE;
        }
    }

    private static List<List<String>> wrapped(List<String> cells, double[] widths, PaperType type) {
        List<List<String>> wrapped = new ArrayList<>();
        for (int column = 0; column < widths.length; column++) {
            // A hair more than measured, so that rounding does not break what just fits.
            wrapped.add(Wrapping.lines(cells.get(column), widths[column] + 0.01, type.at(SIZE)));
        }
        return wrapped;
    }

    private static double height(List<List<String>> cells) {
        return cells.stream().mapToInt(List::size).max().orElse(1) * LINE + 2 * PAD;
    }

    private static double total(double[] widths) {
        double total = 0;
        for (double width : widths) {
            total += width + GAP;
        }
        return total;
    }
}
