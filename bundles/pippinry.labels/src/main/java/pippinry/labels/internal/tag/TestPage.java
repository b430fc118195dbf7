package pippinry.labels.internal.tag;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import pippinry.labels.internal.paper.Box;
import pippinry.labels.internal.paper.Lettering;
import pippinry.labels.internal.paper.Metrics;
import pippinry.labels.internal.paper.Paper;
import pippinry.labels.internal.paper.PrintedFile;
import pippinry.labels.internal.sheet.SheetFormat;
import pippinry.libs.fonts.Face;

/**
 * A page for plain paper that shows where labels would fall, with a cross in the middle of each, its number, and a ruler that
 * tells whether the printer scaled.
 */
public final class TestPage {
    private static final double HAIRLINE = 0.1;
    private static final double CROSS = 2;
    private static final double RULER = 100;
    private static final double TEXT = 3.2;
    private static final double NUMBER = 2.6;

    private static final List<String> WORDS = List.of(
            "Print at 100 %, on plain paper. The ruler must be 100 mm long.",
            "Hold this page behind a sheet of labels against the light.",
            "Where the frames lie too far left or too high by so many mm,",
            "print with --offset-x and --offset-y of as many mm.");

    private final SheetFormat format;
    private final Lettering lettering = new Lettering();

    public TestPage(SheetFormat format) {
        this.format = format;
    }

    /** Writes the page as a PDF, shifted by so many mm to the right and down. */
    public void print(double offsetX, double offsetY, OutputStream out) throws IOException {
        Placing placing = new Placing(format, 1, 1, offsetX, offsetY, Marks.OUTLINES);
        try (PrintedFile file = new PrintedFile("Test page for " + format.name(), lettering)) {
            try (Paper paper = file.page(format.pageWidth(), format.pageHeight())) {
                for (int label = 0; label < format.count(); label++) {
                    drawLabel(placing.label(label), label + 1, paper);
                }
                drawWords(paper);
            }
            file.save(out);
        }
    }

    private void drawLabel(Box label, int number, Paper paper) {
        paper.frame(label, HAIRLINE);
        double x = label.x() + label.width() / 2;
        double y = label.y() + label.height() / 2;
        paper.line(x - CROSS, y, x + CROSS, y, HAIRLINE);
        paper.line(x, y - CROSS, x, y + CROSS, HAIRLINE);
        paper.text(Face.PLAIN, NUMBER, String.valueOf(number), label.x() + 1, label.y() + 1 + NUMBER);
    }

    private void drawWords(Paper paper) {
        double width = Math.max(RULER, widest()) + 8;
        double height = (WORDS.size() + 1) * TEXT * Metrics.LINE + 14;
        if (width > format.pageWidth() || height > format.pageHeight()) {
            return;
        }
        Box card = new Box((format.pageWidth() - width) / 2, (format.pageHeight() - height) / 2, width, height);
        paper.fill(card, 1);
        paper.frame(card, HAIRLINE);
        drawText(card, paper);
        drawRuler(card.x() + (width - RULER) / 2, card.bottom() - 5, paper);
    }

    private double widest() {
        return WORDS.stream()
                .mapToDouble(line -> TEXT * lettering.width(Face.PLAIN, line))
                .max()
                .orElse(0);
    }

    private void drawText(Box card, Paper paper) {
        double baseline = card.y() + 3 + TEXT;
        paper.text(Face.STRONG, TEXT, format.toString(), card.x() + 4, baseline);
        for (String line : WORDS) {
            baseline += TEXT * Metrics.LINE;
            paper.text(Face.PLAIN, TEXT, line, card.x() + 4, baseline);
        }
    }

    private static void drawRuler(double x, double y, Paper paper) {
        paper.line(x, y, x + RULER, y, HAIRLINE);
        for (int mm = 0; mm <= RULER; mm++) {
            double tick = mm % 10 == 0 ? 4 : mm % 5 == 0 ? 2.5 : 1.5;
            paper.line(x + mm, y, x + mm, y - tick, HAIRLINE);
        }
    }
}
