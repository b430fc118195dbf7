package pippinry.labels.internal.score;

import java.util.ArrayList;
import java.util.List;
import pippinry.labels.internal.paper.Metrics;
import pippinry.labels.internal.paper.Paper;
import pippinry.libs.fonts.Face;

/** The pages behind a sheet that say how each column is scored. */
final class ScoreLegend {
    private static final double SIZE = 3.1;
    private static final double INDENT = 4;

    private record Line(Face face, String text, double indent) {}

    private final SheetGrid grid;
    private final Metrics metrics;
    private final List<Line> lines = new ArrayList<>();

    ScoreLegend(ScoreSheet sheet, SheetGrid grid, Metrics metrics) {
        this.grid = grid;
        this.metrics = metrics;
        sheet.columns().stream().filter(column -> !column.legend().isEmpty()).forEach(this::add);
    }

    private void add(ScoreColumn column) {
        if (!lines.isEmpty()) {
            lines.add(new Line(Face.PLAIN, "", 0));
        }
        lines.add(new Line(Face.STRONG, column.title() + " (" + column.code() + ")", 0));
        column.legend().forEach(this::wrap);
    }

    private void wrap(String text) {
        String line = "";
        for (String word : text.strip().split("\\s+")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && SIZE * metrics.width(Face.PLAIN, longer) > width()) {
                lines.add(new Line(Face.PLAIN, line, INDENT));
                longer = word;
            }
            line = longer;
        }
        lines.add(new Line(Face.PLAIN, line, INDENT));
    }

    private double width() {
        return grid.right() - SheetGrid.LEFT - INDENT;
    }

    private int perPage() {
        return (int) ((grid.room() + SheetGrid.TITLES) / (SIZE * Metrics.LINE));
    }

    int pages() {
        return (lines.size() + perPage() - 1) / perPage();
    }

    void draw(int page, Paper paper) {
        double baseline = SheetGrid.TOP + SheetGrid.HEAD + SIZE;
        int from = page * perPage();
        for (Line line : lines.subList(from, Math.min(lines.size(), from + perPage()))) {
            if (!line.text().isEmpty()) {
                paper.text(line.face(), SIZE, line.text(), SheetGrid.LEFT + line.indent(), baseline);
            }
            baseline += SIZE * Metrics.LINE;
        }
    }
}
