package pippinry.labels.internal.score;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Set;
import pippinry.labels.internal.code.CodePicture;
import pippinry.labels.internal.code.CodeWriter;
import pippinry.labels.internal.code.Symbology;
import pippinry.labels.internal.paper.Box;
import pippinry.labels.internal.paper.Dots;
import pippinry.labels.internal.paper.FittedText;
import pippinry.labels.internal.paper.Lettering;
import pippinry.labels.internal.paper.Metrics;
import pippinry.labels.internal.paper.Paper;
import pippinry.labels.internal.paper.PrintedFile;
import pippinry.labels.internal.tag.NumberLines;
import pippinry.labels.internal.tag.Tag;
import pippinry.libs.fonts.Face;

/** Prints a sheet as a PDF: the same sheet gives the same bytes. The last pages say how each column is scored. */
public final class ScoreSheetPrinting {
    private static final Dots DOTS = new Dots(300);
    private static final double THIN = 0.12;
    private static final double THICK = 0.35;
    private static final double TITLE = 5.2;
    private static final double TEXT = 3.1;
    private static final double SMALL = 2.6;
    private static final double NUMBER = 4.6;
    private static final double QUIET_EDGE = 0.4;

    private final CodeWriter writer = new CodeWriter();
    private final Lettering lettering = new Lettering();
    private final ScoreSheet sheet;
    private final SheetGrid grid;

    public ScoreSheetPrinting(ScoreSheet sheet) {
        this.sheet = sheet;
        this.grid = SheetGrid.of(sheet);
    }

    /** What came of it. @param missing signs that the font lacks, printed as an empty box */
    public record Printed(int pages, int lines, Set<String> missing) {}

    public Printed print(OutputStream out) throws IOException {
        List<List<SheetPages.Item>> pages = SheetPages.of(sheet, grid);
        ScoreLegend legend = new ScoreLegend(sheet, grid, lettering);
        int all = pages.size() + legend.pages();
        try (PrintedFile file =
                new PrintedFile(sheet.title() + " " + sheet.number().number(), lettering)) {
            for (int page = 0; page < pages.size(); page++) {
                try (Paper paper = file.page(grid.width(), grid.height())) {
                    drawHead(paper, true);
                    drawTitles(paper);
                    drawItems(pages.get(page), paper);
                    drawFoot("Blank is not looked at; ns is looked at and not seen.", page + 1, all, paper);
                }
            }
            for (int page = 0; page < legend.pages(); page++) {
                try (Paper paper = file.page(grid.width(), grid.height())) {
                    drawHead(paper, false);
                    legend.draw(page, paper);
                    drawFoot("How it is scored", pages.size() + page + 1, all, paper);
                }
            }
            file.save(out);
        }
        return new Printed(all, sheet.rows().size(), lettering.missing());
    }

    private void drawHead(Paper paper, boolean toFillIn) {
        CodePicture code = writer.write(Symbology.QR, sheet.number().code());
        double module = DOTS.mm(DOTS.within((SheetGrid.HEAD - 2) / code.columnsWithQuiet()));
        double side = code.columnsWithQuiet() * module;
        drawCode(code, grid.right() - side, SheetGrid.TOP, module, paper);
        double x = SheetGrid.LEFT;
        double baseline = SheetGrid.TOP + TITLE;
        paper.text(Face.STRONG, TITLE, sheet.title(), x, baseline);
        double after = x + TITLE * lettering.width(Face.STRONG, sheet.title() + " ");
        paper.text(Face.NUMBER, TITLE, sheet.number().code(), after, baseline);
        Box about = new Box(x, baseline + 1.2, grid.right() - side - x - 2, 5);
        write(sheet.about(), about, TEXT, paper);
        if (toFillIn) {
            drawBlanks(x, baseline + 13.5, grid.right() - side - 3, paper);
        }
    }

    private void drawBlanks(double x, double baseline, double right, Paper paper) {
        double third = (right - x) / 3;
        for (String word : List.of("Date", "Person", "Weather")) {
            paper.text(Face.PLAIN, TEXT, word, x, baseline);
            double from = x + TEXT * lettering.width(Face.PLAIN, word) + 1.5;
            paper.line(from, baseline + 0.6, x + third - 4, baseline + 0.6, THIN);
            x += third;
        }
    }

    private void drawTitles(Paper paper) {
        double y = SheetGrid.TOP + SheetGrid.HEAD;
        double bottom = y + SheetGrid.TITLES;
        double size = titleSize(y);
        title("place", "", new Box(SheetGrid.LEFT, y, SheetGrid.PLACE, SheetGrid.TITLES), size, paper);
        title("number", "", new Box(grid.number(), y, SheetGrid.NUMBER, SheetGrid.TITLES), size, paper);
        for (int column = 0; column < sheet.columns().size(); column++) {
            ScoreColumn of = sheet.columns().get(column);
            title(of.title(), of.hint(), titleCell(column, y), size, paper);
        }
        Box note = grid.note(y);
        title("note", "", new Box(note.x(), y, note.width(), SheetGrid.TITLES), size, paper);
        paper.line(SheetGrid.LEFT, bottom, grid.right(), bottom, THICK);
    }

    private Box titleCell(int column, double y) {
        return new Box(grid.box(column), y, grid.boxWidth(), SheetGrid.TITLES);
    }

    private static Box titleRoom(Box cell) {
        return new Box(cell.x() + 0.8, cell.y() + 0.5, Math.max(0, cell.width() - 1.6), cell.height() - SMALL - 2.2);
    }

    /** The largest letters in which every title fits. */
    private double titleSize(double y) {
        double size = TEXT;
        for (int column = 0; column < sheet.columns().size(); column++) {
            List<String> title = List.of(sheet.columns().get(column).title());
            double fits = new FittedText(lettering, titleRoom(titleCell(column, y)), TEXT)
                    .fit(title)
                    .size();
            size = Math.min(size, fits);
        }
        return size;
    }

    private void title(String title, String hint, Box cell, double size, Paper paper) {
        Box room = titleRoom(cell);
        write(title, room, size, paper);
        if (!hint.isEmpty()) {
            write(
                    hint,
                    new Box(room.x(), cell.bottom() - SMALL * 1.25 - 0.4, room.width(), SMALL * 1.25),
                    SMALL,
                    paper);
        }
    }

    private void write(String text, Box room, double largest, Paper paper) {
        List<String> lines = text.isEmpty() ? List.of() : List.of(text);
        new FittedText(lettering, room, largest).fit(lines).runs().forEach(run -> paper.text(run, 0, 0));
    }

    private void drawItems(List<SheetPages.Item> items, Paper paper) {
        double y = grid.firstLine();
        for (SheetPages.Item item : items) {
            double top = y;
            item.row().ifPresentOrElse(row -> drawRow(row, top, paper), () -> drawHeading(item.heading(), top, paper));
            y += item.height();
        }
    }

    private void drawHeading(String heading, double y, Paper paper) {
        paper.fill(new Box(SheetGrid.LEFT, y, grid.right() - SheetGrid.LEFT, SheetGrid.HEADING), 0.93);
        Box room = new Box(SheetGrid.LEFT + 1, y + 1.2, grid.right() - SheetGrid.LEFT - 2, SheetGrid.HEADING - 1.6);
        write(heading, room, TEXT * 1.1, paper);
        paper.line(SheetGrid.LEFT, y, grid.right(), y, THIN);
        paper.line(SheetGrid.LEFT, y + SheetGrid.HEADING, grid.right(), y + SheetGrid.HEADING, THIN);
    }

    private void drawRow(ScoreRow row, double y, Paper paper) {
        double bottom = y + SheetGrid.LINE;
        drawPlace(row.place(), y, paper);
        drawRowCode(row.tag(), y, paper);
        drawNumber(row.tag(), y, paper);
        for (int column = 0; column <= sheet.columns().size(); column++) {
            paper.line(grid.box(column), y, grid.box(column), bottom, THIN);
        }
        paper.line(SheetGrid.LEFT, bottom, grid.right(), bottom, THIN);
        paper.line(grid.right(), y, grid.right(), bottom, THIN);
    }

    private void drawPlace(String place, double y, Paper paper) {
        write(place, new Box(SheetGrid.LEFT, y + 1.6, SheetGrid.PLACE - 1, SheetGrid.LINE - 2), 4, paper);
    }

    private void drawRowCode(Tag tag, double y, Paper paper) {
        CodePicture code = writer.write(Symbology.DATA_MATRIX, tag.code());
        double most = Math.min(SheetGrid.CODE, SheetGrid.LINE) - QUIET_EDGE;
        double module = DOTS.mm(Math.min(4, DOTS.within(most / code.rowsWithQuiet())));
        double side = code.rowsWithQuiet() * module;
        drawCode(code, grid.code() + (SheetGrid.CODE - side) / 2, y + (SheetGrid.LINE - side) / 2, module, paper);
    }

    /** A number without a word below stands in the middle of its line. */
    private void drawNumber(Tag tag, double y, Paper paper) {
        Box room = new Box(grid.number() + 0.8, y + 1.1, SheetGrid.NUMBER - 1.6, SheetGrid.LINE - 1.6);
        NumberLines number = NumberLines.of(tag, 1, lettering);
        double size = Math.min(NUMBER, number.largestSize(room.width(), room.height() * 0.55));
        double down = tag.lines().isEmpty() ? (SheetGrid.LINE - size * Metrics.CAP_HEIGHT) / 2 - 1.1 : 0;
        number.runs(room, size, lettering).forEach(run -> paper.text(run, 0, down));
        Box below = room.below(size * Metrics.CAP_HEIGHT + 0.5);
        new FittedText(lettering, below, SMALL).fit(tag.lines()).runs().forEach(run -> paper.text(run, 0, 0));
    }

    /** The corner is that of the quiet zone. */
    private static void drawCode(CodePicture code, double x, double y, double module, Paper paper) {
        double quiet = code.symbology().quietBeside() * module;
        paper.code(code, DOTS.nearest(x + quiet), DOTS.nearest(y + quiet), module, 0);
    }

    private void drawFoot(String words, int page, int all, Paper paper) {
        double baseline = grid.height() - 7;
        paper.text(Face.PLAIN, SMALL, words, SheetGrid.LEFT, baseline);
        String count = "page " + page + " of " + all;
        paper.text(Face.PLAIN, SMALL, count, grid.right() - SMALL * lettering.width(Face.PLAIN, count), baseline);
    }
}
