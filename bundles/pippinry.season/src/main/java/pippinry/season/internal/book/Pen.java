package pippinry.season.internal.book;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import java.awt.Color;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.util.Matrix;
import pippinry.libs.fonts.Face;

/** Draws on the pages of the book, from the top of each down; what comes next is lower on the page, or on the next. */
final class Pen implements AutoCloseable {

    private final PDDocument document;
    private final PaperType plain;
    private final PaperType strong;
    private final List<PDPage> pages = new ArrayList<>();
    private PDPageContentStream stream;
    private double y;

    Pen(PDDocument document) throws IOException {
        this.document = document;
        this.plain = new PaperType(document, Face.PLAIN);
        this.strong = new PaperType(document, Face.STRONG);
    }

    PaperType plain() {
        return plain;
    }

    PaperType strong() {
        return strong;
    }

    /** Pages so far; the last is drawn on. */
    int pages() {
        return pages.size();
    }

    PDPage page(int number) {
        return pages.get(number);
    }

    double y() {
        return y;
    }

    void newPage() throws IOException {
        closePage();
        PDPage page = new PDPage(new PDRectangle(Setting.PAGE_WIDTH, Setting.PAGE_HEIGHT));
        document.addPage(page);
        pages.add(page);
        stream = new PDPageContentStream(document, page);
        y = Setting.TOP;
    }

    /** Starts a page unless so much room is left on this one. @return whether it did */
    boolean ensure(double height) throws IOException {
        boolean full = stream == null || y - height < Setting.BOTTOM;
        if (full) {
            newPage();
        }
        return full;
    }

    boolean isAtTop() {
        return y == Setting.TOP;
    }

    void down(double height) {
        y -= height;
    }

    /** Text whose baseline lies so far below the current height. */
    void text(PaperType type, double size, Color color, String text, double x, double below) throws IOException {
        stream.setNonStrokingColor(color);
        type.show(stream, text, size, x, y - below);
    }

    /** A filled box whose top lies so far below the current height. */
    void box(Color color, double x, double below, double width, double height) throws IOException {
        stream.setNonStrokingColor(color);
        stream.addRect((float) x, (float) (y - below - height), (float) width, (float) height);
        stream.fill();
    }

    /** Paints the picture below the current height over the width of the text. */
    void picture(Block.Figure figure, int width, int height) throws IOException {
        PdfBoxGraphics2D graphics = new PdfBoxGraphics2D(document, width, height);
        graphics.setFontTextDrawer(new PictureType(plain, strong));
        graphics.setFont(PaperFaces.plain(9));
        graphics.setColor(Color.BLACK);
        figure.picture().paint(graphics, width, height);
        graphics.dispose();
        stream.saveGraphicsState();
        stream.transform(Matrix.getTranslateInstance(Setting.MARGIN, (float) (y - height)));
        stream.drawForm(graphics.getXFormObject());
        stream.restoreGraphicsState();
    }

    /** Draws on a page that is finished, at a height from its lower edge. */
    void onPage(int number, PaperType type, double size, Color color, String text, double x, double height)
            throws IOException {
        closePage();
        try (PDPageContentStream again =
                new PDPageContentStream(document, pages.get(number), AppendMode.APPEND, true, true)) {
            again.setNonStrokingColor(color);
            type.show(again, text, size, x, height);
        }
    }

    private void closePage() throws IOException {
        if (stream != null) {
            stream.close();
            stream = null;
        }
    }

    @Override
    public void close() throws IOException {
        closePage();
    }
}
