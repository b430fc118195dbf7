package pippinry.season.internal.book;

import java.awt.Font;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.io.InputStream;
import java.text.Normalizer;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import pippinry.libs.fonts.Face;

/**
 * One face in a PDF, embedded in part. Text that needs shaping or runs from right to left is laid out by Java2D and drawn as
 * outlines, since a PDF shows signs just in the order they are given. A sign that the face lacks becomes an empty box.
 */
final class PaperType {

    private static final int EMPTY_BOX = 0x25A1;
    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);
    private static final double PER_MILLE = 1000;

    private final PDFont font;
    private final Font drawn;
    private final CmapLookup signs;

    PaperType(PDDocument document, Face face) throws IOException {
        TrueTypeFont file = read(face);
        font = PDType0Font.load(document, file, true);
        drawn = face == Face.STRONG ? PaperFaces.strong(1) : PaperFaces.plain(1);
        signs = file.getUnicodeCmapLookup();
    }

    private static TrueTypeFont read(Face face) throws IOException {
        try (InputStream file = face.open()) {
            return new TTFParser().parse(new RandomAccessReadBuffer(file));
        }
    }

    PDFont font() {
        return font;
    }

    boolean has(int sign) {
        return signs.getGlyphId(sign) != 0;
    }

    Measure at(double size) {
        return text -> width(text, size);
    }

    double width(String text, double size) {
        String shown = drawable(text);
        if (shown.isEmpty()) {
            return 0;
        }
        if (needsLayout(shown)) {
            return layout(shown, size).getAdvance();
        }
        try {
            return font.getStringWidth(shown) / PER_MILLE * size;
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** @param x left end @param y baseline */
    void show(PDPageContentStream pen, String text, double size, double x, double y) throws IOException {
        String shown = drawable(text);
        if (shown.isEmpty()) {
            return;
        }
        if (needsLayout(shown)) {
            fill(pen, layout(shown, size).getOutline(new AffineTransform(1, 0, 0, -1, x, y)));
            return;
        }
        pen.beginText();
        pen.setFont(font, (float) size);
        pen.newLineAtOffset((float) x, (float) y);
        pen.showText(shown);
        pen.endText();
    }

    static boolean needsLayout(String text) {
        char[] signs = text.toCharArray();
        return Font.textRequiresLayout(signs, 0, signs.length);
    }

    private TextLayout layout(String text, double size) {
        return new TextLayout(text, drawn.deriveFont((float) size), EXACT);
    }

    private String drawable(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFC)
                .codePoints()
                .map(sign -> Character.isISOControl(sign) ? ' ' : sign)
                .map(sign -> has(sign) ? sign : EMPTY_BOX)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    private static void fill(PDPageContentStream pen, Shape outline) throws IOException {
        float[] at = new float[6];
        float x = 0;
        float y = 0;
        for (PathIterator parts = outline.getPathIterator(null); !parts.isDone(); parts.next()) {
            int kind = parts.currentSegment(at);
            switch (kind) {
                case PathIterator.SEG_MOVETO -> pen.moveTo(at[0], at[1]);
                case PathIterator.SEG_LINETO -> pen.lineTo(at[0], at[1]);
                case PathIterator.SEG_QUADTO -> curve(pen, x, y, at);
                case PathIterator.SEG_CUBICTO -> pen.curveTo(at[0], at[1], at[2], at[3], at[4], at[5]);
                default -> pen.closePath();
            }
            int last = kind == PathIterator.SEG_QUADTO ? 2 : kind == PathIterator.SEG_CUBICTO ? 4 : 0;
            if (kind != PathIterator.SEG_CLOSE) {
                x = at[last];
                y = at[last + 1];
            }
        }
        pen.fill();
    }

    /** PDF knows cubic curves only. */
    private static void curve(PDPageContentStream pen, float x, float y, float[] at) throws IOException {
        pen.curveTo(
                x + (at[0] - x) * 2 / 3,
                y + (at[1] - y) * 2 / 3,
                at[2] + (at[0] - at[2]) * 2 / 3,
                at[3] + (at[1] - at[3]) * 2 / 3,
                at[2],
                at[3]);
    }
}
