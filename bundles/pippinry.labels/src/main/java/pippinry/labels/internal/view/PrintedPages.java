package pippinry.labels.internal.view;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import pippinry.labels.internal.sheet.SheetFormats;
import pippinry.labels.internal.tag.Placing;
import pippinry.labels.internal.tag.Tag;
import pippinry.labels.internal.tag.TagPrinting;
import pippinry.labels.internal.tag.TagStyle;

/** The pages as they will be printed: the preview is drawn from the very file that goes to the printer. */
final class PrintedPages {

    private final byte[] file;
    private final int pages;

    private PrintedPages(byte[] file, int pages) {
        this.file = file;
        this.pages = pages;
    }

    /** @throws IllegalArgumentException if a tag does not fit on the label, with what would do */
    static PrintedPages of(List<Tag> tags, Placing placing, TagStyle style) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            new TagPrinting(SheetFormats.shipped(), style, placing).print("Tags", tags, out);
            try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
                return new PrintedPages(out.toByteArray(), document.getNumberOfPages());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    int pages() {
        return pages;
    }

    /** @param page from 0 */
    BufferedImage image(int page, float dotsPerInch) {
        try (PDDocument document = Loader.loadPDF(file)) {
            return new PDFRenderer(document).renderImageWithDPI(page, dotsPerInch);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
