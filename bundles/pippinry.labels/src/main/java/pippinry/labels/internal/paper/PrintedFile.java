package pippinry.labels.internal.paper;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences.PRINT_SCALING;
import pippinry.libs.fonts.Face;

/**
 * A PDF in the making. The same drawing gives the same bytes: it carries no clock time, and its identity comes from what
 * is written in it. It asks the printer not to scale, since labels must fall where the sheet has them.
 */
public final class PrintedFile implements AutoCloseable {
    private static final double POINTS_PER_MM = 72 / 25.4;

    private final PDDocument document = new PDDocument();
    private final Map<Face, PDFont> fonts = new EnumMap<>(Face.class);
    private final Lettering lettering;
    private final String title;
    private long identity;

    public PrintedFile(String title, Lettering lettering) {
        this.title = title;
        this.identity = title.hashCode();
        this.lettering = lettering;
        describe();
    }

    private void describe() {
        PDDocumentInformation about = new PDDocumentInformation();
        about.setTitle(title);
        about.setCreator("Pippinry");
        document.setDocumentInformation(about);
        PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
        preferences.setPrintScaling(PRINT_SCALING.None);
        document.getDocumentCatalog().setViewerPreferences(preferences);
    }

    /** A new page of so many mm; close it before the next. */
    public Paper page(double width, double height) {
        PDPage page = new PDPage(new PDRectangle(points(width), points(height)));
        document.addPage(page);
        return new Paper(document, page, this, height);
    }

    public int pages() {
        return document.getNumberOfPages();
    }

    Lettering lettering() {
        return lettering;
    }

    void wrote(String text) {
        identity = identity * 31 + text.hashCode();
    }

    PDFont font(Face face) {
        return fonts.computeIfAbsent(face, this::embed);
    }

    private PDFont embed(Face face) {
        try {
            return PDType0Font.load(document, lettering.font(face), true);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Writes the file once; nothing can be drawn afterwards. */
    public void save(OutputStream out) throws IOException {
        document.setDocumentId(identity);
        document.save(out);
    }

    @Override
    public void close() {
        try {
            document.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static float points(double mm) {
        return (float) (mm * POINTS_PER_MM);
    }
}
