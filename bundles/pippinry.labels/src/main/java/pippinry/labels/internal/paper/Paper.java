package pippinry.labels.internal.paper;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import pippinry.labels.internal.code.Bar;
import pippinry.labels.internal.code.CodePicture;
import pippinry.libs.fonts.Face;

/** One page, drawn on in millimetres from its top left corner, in black unless a grey is named. */
public final class Paper implements AutoCloseable {
    private final PDPageContentStream pen;
    private final PrintedFile file;
    private final double height;

    Paper(PDDocument document, PDPage page, PrintedFile file, double height) {
        this.file = file;
        this.height = height;
        this.pen = orFail(() -> new PDPageContentStream(document, page));
    }

    /** Draws a text with its left end and baseline there; what the face lacks becomes an empty box. */
    public void text(Face face, double size, String text, double x, double baseline) {
        String drawable = file.lettering().drawable(face, text);
        file.wrote(drawable);
        draw(() -> {
            pen.beginText();
            pen.setFont(file.font(face), PrintedFile.points(size));
            pen.newLineAtOffset(PrintedFile.points(x), up(baseline));
            pen.showText(drawable);
            pen.endText();
        });
    }

    /** Draws a text that has its place, moved by so many mm. */
    public void text(TextRun run, double right, double down) {
        text(run.face(), run.size(), run.text(), run.x() + right, run.baseline() + down);
    }

    /** Draws a line so many mm thick. */
    public void line(double x1, double y1, double x2, double y2, double thick) {
        draw(() -> {
            pen.setLineWidth(PrintedFile.points(thick));
            pen.moveTo(PrintedFile.points(x1), up(y1));
            pen.lineTo(PrintedFile.points(x2), up(y2));
            pen.stroke();
        });
    }

    /** Draws the four sides of a box. */
    public void frame(Box box, double thick) {
        draw(() -> {
            pen.setLineWidth(PrintedFile.points(thick));
            rectangle(box);
            pen.stroke();
        });
    }

    /** Fills a box with a grey, 0 black to 1 white. */
    public void fill(Box box, double grey) {
        draw(() -> {
            pen.setNonStrokingColor((float) grey);
            rectangle(box);
            pen.fill();
            pen.setNonStrokingColor(0f);
        });
    }

    /**
     * Draws a code with the top left corner of its dark part there. All bars go into one filled path: a screen then shows no
     * seams between them.
     *
     * @param module width of a module in mm
     * @param barHeight height in mm of a linear code's bars; other codes have square modules
     */
    public void code(CodePicture code, double x, double y, double module, double barHeight) {
        double down = code.symbology().isLinear() ? barHeight : module;
        draw(() -> {
            for (Bar bar : code.bars()) {
                rectangle(new Box(x + bar.x() * module, y + bar.y() * down, bar.width() * module, bar.height() * down));
            }
            pen.fill();
        });
    }

    private void rectangle(Box box) throws IOException {
        pen.addRect(
                PrintedFile.points(box.x()),
                up(box.bottom()),
                PrintedFile.points(box.width()),
                PrintedFile.points(box.height()));
    }

    private float up(double down) {
        return PrintedFile.points(height - down);
    }

    @Override
    public void close() {
        draw(pen::close);
    }

    private static void draw(Stroke stroke) {
        orFail(() -> {
            stroke.make();
            return null;
        });
    }

    private static <T> T orFail(Making<T> making) {
        try {
            return making.make();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @FunctionalInterface
    private interface Stroke {
        void make() throws IOException;
    }

    @FunctionalInterface
    private interface Making<T> {
        T make() throws IOException;
    }
}
