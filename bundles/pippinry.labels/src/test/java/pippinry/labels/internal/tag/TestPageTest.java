package pippinry.labels.internal.tag;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import pippinry.labels.internal.paper.Box;
import pippinry.labels.internal.sheet.SheetFormat;
import pippinry.labels.internal.sheet.SheetFormats;

class TestPageTest {
    private static final SheetFormat SHEET = SheetFormats.shipped().named("A4-21");

    @Test
    void framesLieWhereLabelsAre() throws IOException {
        try (PDDocument page = printed(SHEET, 3, -1)) {
            BufferedImage image = new PDFRenderer(page).renderImageWithDPI(0, 300, ImageType.GRAY);
            Box last = SHEET.label(20).shiftedBy(3, -1);
            assertTrue(darkNear(image, last.right(), last.y() + 7), "right side of the last label");
            assertTrue(darkNear(image, last.x() + 20, last.bottom()), "lower side of the last label");
        }
    }

    @Test
    void thePageSaysHowToUseIt() throws IOException {
        try (PDDocument page = printed(SHEET, 0, 0)) {
            String text = new PDFTextStripper().getText(page);
            assertTrue(text.contains("The ruler must be 100 mm long"), text);
        }
    }

    @Test
    void aNarrowRollHasNoRoomForWords() throws IOException {
        try (PDDocument page = printed(SheetFormat.roll(40, 20), 0, 0)) {
            assertEquals("1", new PDFTextStripper().getText(page).strip());
        }
    }

    private static PDDocument printed(SheetFormat sheet, double x, double y) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new TestPage(sheet).print(x, y, out);
        return Loader.loadPDF(out.toByteArray());
    }

    private static boolean darkNear(BufferedImage image, double x, double y) {
        for (int dx = -2; dx <= 2; dx++) {
            for (int dy = -2; dy <= 2; dy++) {
                int light = image.getRaster().getSample(pixel(x) + dx, pixel(y) + dy, 0);
                if (light < 160) {
                    return true;
                }
            }
        }
        return false;
    }

    private static int pixel(double mm) {
        return (int) Math.round(mm * 300 / 25.4);
    }
}
