package pippinry.labels.internal.tag;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.MultiFormatReader;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.GlobalHistogramBinarizer;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import pippinry.labels.internal.code.Symbology;
import pippinry.labels.internal.paper.Box;
import pippinry.labels.internal.paper.Lettering;
import pippinry.labels.internal.sheet.SheetFormats;

/** A print, read back from its file: what a camera sees at 300 dots per inch, and where letters stand. */
final class Printed implements AutoCloseable {
    static final int DPI = 300;
    private static final double PIXELS_PER_MM = DPI / 25.4;
    private static final double POINTS_PER_MM = 72 / 25.4;

    final TagsPrinted answer;
    final byte[] bytes;
    final List<Placed> placed;
    private final PDDocument document;

    /** A tag with its layout, the page it is on and the label it has there. */
    record Placed(LaidTag laid, int page, Box label) {
        Box codeBox() {
            return laid.code().orElseThrow().withQuiet().shiftedBy(label.x(), label.y());
        }
    }

    private Printed(TagsPrinted answer, byte[] bytes, List<Placed> placed, PDDocument document) {
        this.answer = answer;
        this.bytes = bytes;
        this.placed = placed;
        this.document = document;
    }

    static Printed of(List<Tag> tags, TagStyle style, Placing placing) {
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            TagsPrinted answer = new TagPrinting(SheetFormats.shipped(), style, placing).print("Tags", tags, out);
            return new Printed(
                    answer, out.toByteArray(), placed(tags, style, placing), Loader.loadPDF(out.toByteArray()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Placed> placed(List<Tag> tags, TagStyle style, Placing placing) {
        List<LaidTag> laid = new LayingOut(new Lettering(), style, placing.format(), SheetFormats.shipped()).lay(tags);
        List<Placed> placed = new ArrayList<>();
        for (int n = 0; n < laid.size() * placing.copies(); n++) {
            placed.add(new Placed(laid.get(n / placing.copies()), placing.page(n), placing.label(n)));
        }
        return placed;
    }

    BufferedImage page(int page) {
        try {
            return new PDFRenderer(document).renderImageWithDPI(page, DPI, ImageType.GRAY);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static BufferedImage part(BufferedImage page, Box box) {
        int x = Math.max(0, (int) Math.round(box.x() * PIXELS_PER_MM));
        int y = Math.max(0, (int) Math.round(box.y() * PIXELS_PER_MM));
        int right = Math.min(page.getWidth(), (int) Math.round(box.right() * PIXELS_PER_MM));
        int bottom = Math.min(page.getHeight(), (int) Math.round(box.bottom() * PIXELS_PER_MM));
        return page.getSubimage(x, y, right - x, bottom - y);
    }

    static String decoded(BufferedImage image, Symbology symbology) throws NotFoundException {
        int[] pixels = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        RGBLuminanceSource light = new RGBLuminanceSource(image.getWidth(), image.getHeight(), pixels);
        BarcodeFormat format = BarcodeFormat.valueOf(symbology == Symbology.QR ? "QR_CODE" : symbology.name());
        return new MultiFormatReader()
                .decode(
                        new BinaryBitmap(new GlobalHistogramBinarizer(light)),
                        Map.of(DecodeHintType.POSSIBLE_FORMATS, List.of(format), DecodeHintType.TRY_HARDER, true))
                .getText();
    }

    /** The box of every letter of a page, and the letter. */
    List<Letter> letters(int page) {
        List<Letter> letters = new ArrayList<>();
        try {
            PDFTextStripper stripper = new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition text) {
                    letters.add(Letter.of(text));
                }
            };
            stripper.setStartPage(page + 1);
            stripper.setEndPage(page + 1);
            stripper.getText(document);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return letters;
    }

    /** All letters, with one space where there is any. */
    String text() throws IOException {
        return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }

    int pages() {
        return document.getNumberOfPages();
    }

    record Letter(String sign, Box box) {
        private static final double HIGHEST = 0.76;
        private static final double LOWEST = 0.24;

        static Letter of(TextPosition text) {
            double size = text.getFontSizeInPt() / POINTS_PER_MM;
            double lowest = text.getUnicode().matches("[A-Z0-9=*-]") ? 0.02 : LOWEST;
            double y = text.getYDirAdj() / POINTS_PER_MM;
            return new Letter(
                    text.getUnicode(),
                    new Box(
                            text.getXDirAdj() / POINTS_PER_MM,
                            y - HIGHEST * size,
                            text.getWidthDirAdj() / POINTS_PER_MM,
                            (HIGHEST + lowest) * size));
        }
    }

    @Override
    public void close() {
        try {
            document.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
