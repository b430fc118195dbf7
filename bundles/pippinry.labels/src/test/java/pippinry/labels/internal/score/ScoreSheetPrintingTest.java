package pippinry.labels.internal.score;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pippinry.labels.internal.tag.Tag;
import pippinry.model.number.CheckCharacter;

class ScoreSheetPrintingTest {
    private static final double PIXELS = 300 / 25.4;

    private static Tag tag(String number) {
        return new Tag(number, Optional.of("" + CheckCharacter.of(number)), List.of("Golden Delicious × Prima"));
    }

    private static RowGroup row(int row, int plants) {
        return new RowGroup(
                "block A · row " + row + " · counted from the gate · guards not counted",
                IntStream.rangeClosed(1, plants)
                        .mapToObj(place -> new ScoreRow("" + place, tag("26-%03d-%03dA".formatted(row, place))))
                        .toList());
    }

    private static ScoreSheet sheet(int columns, RowGroup... groups) {
        List<ScoreColumn> of = IntStream.range(0, columns)
                .mapToObj(number -> new ScoreColumn(
                        "trait_" + number, "Scab on leaves " + number, "1 – 9", List.of("1 none", "9 the whole tree")))
                .toList();
        return new ScoreSheet(tag("S-0012"), "Score sheet", "Larkmoor · printed 2026-03-27", of, List.of(groups));
    }

    private static byte[] printed(ScoreSheet sheet) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new ScoreSheetPrinting(sheet).print(out);
        return out.toByteArray();
    }

    @Test
    void everyLinesCodeIsReadAndSoIsTheSheets() throws Exception {
        ScoreSheet sheet = sheet(5, row(7, 20), row(8, 12));
        SheetGrid grid = SheetGrid.of(sheet);
        try (PDDocument document = Loader.loadPDF(printed(sheet))) {
            List<List<SheetPages.Item>> pages = SheetPages.of(sheet, grid);
            for (int page = 0; page < pages.size(); page++) {
                BufferedImage image = new PDFRenderer(document).renderImageWithDPI(page, 300, ImageType.GRAY);
                assertEquals(
                        "S-0012=" + CheckCharacter.of("S-0012"),
                        read(image, grid.right() - 30, SheetGrid.TOP, 30, SheetGrid.HEAD, BarcodeFormat.QR_CODE));
                double y = grid.firstLine();
                for (SheetPages.Item item : pages.get(page)) {
                    if (item.row().isPresent()) {
                        assertEquals(
                                item.row().get().tag().code(),
                                read(image, grid.code(), y + 0.3, SheetGrid.CODE, 7.9, BarcodeFormat.DATA_MATRIX));
                    }
                    y += item.height();
                }
            }
        }
    }

    private static String read(
            BufferedImage page, double x, double y, double width, double height, BarcodeFormat format)
            throws NotFoundException {
        BufferedImage part = page.getSubimage(
                (int) (x * PIXELS), (int) (y * PIXELS), (int) (width * PIXELS), (int) (height * PIXELS));
        int[] pixels = part.getRGB(0, 0, part.getWidth(), part.getHeight(), null, 0, part.getWidth());
        return new MultiFormatReader()
                .decode(
                        new BinaryBitmap(new GlobalHistogramBinarizer(
                                new RGBLuminanceSource(part.getWidth(), part.getHeight(), pixels))),
                        Map.of(DecodeHintType.POSSIBLE_FORMATS, List.of(format), DecodeHintType.TRY_HARDER, true))
                .getText();
    }

    @Test
    void linesKeepTheOrderOfTheWalkOverAllPages() {
        ScoreSheet sheet = sheet(5, row(7, 40), row(8, 3), row(9, 40));
        List<String> walked = SheetPages.of(sheet, SheetGrid.of(sheet)).stream()
                .flatMap(List::stream)
                .flatMap(item -> item.row().stream())
                .map(row -> row.tag().number())
                .toList();
        assertEquals(sheet.rows().stream().map(row -> row.tag().number()).toList(), walked);
    }

    @ParameterizedTest
    @ValueSource(ints = {20, 23, 24, 25, 26, 27, 47, 50})
    void aHeadingNeverStandsLastAndPagesAreNotOverfull(int plants) {
        ScoreSheet sheet = sheet(5, row(7, plants), row(8, 30));
        SheetGrid grid = SheetGrid.of(sheet);
        for (List<SheetPages.Item> page : SheetPages.of(sheet, grid)) {
            assertTrue(page.get(0).row().isEmpty(), "a page starts with its heading");
            assertTrue(page.get(page.size() - 1).row().isPresent());
            assertTrue(page.stream().mapToDouble(SheetPages.Item::height).sum() <= grid.room() + 1e-9);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 5, 7, 8, 14})
    void nothingLeavesThePage(int columns) throws IOException {
        try (PDDocument document = Loader.loadPDF(printed(sheet(columns, row(7, 40))))) {
            List<TextPosition> letters = new ArrayList<>();
            PDFTextStripper stripper = new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition text) {
                    letters.add(text);
                }
            };
            stripper.getText(document);
            for (TextPosition letter : letters) {
                assertTrue(letter.getXDirAdj() >= 0, letter::getUnicode);
                assertTrue(letter.getXDirAdj() + letter.getWidthDirAdj() <= letter.getPageWidth(), letter::getUnicode);
                assertTrue(letter.getYDirAdj() <= letter.getPageHeight(), letter::getUnicode);
            }
        }
    }

    @Test
    void pagesAreCountedAndTheLegendStandsBehind() throws IOException {
        try (PDDocument document = Loader.loadPDF(printed(sheet(5, row(7, 40))))) {
            String text = new PDFTextStripper().getText(document);
            assertEquals(3, document.getNumberOfPages());
            assertTrue(text.contains("page 1 of 3") && text.contains("page 3 of 3"), text);
            assertTrue(text.contains("Scab on leaves 0 (trait_0)"), text);
            assertTrue(text.contains("row 7 · counted from the gate · guards not counted, continued"), text);
        }
    }

    @Test
    void theSameSheetGivesTheSameBytes() throws IOException {
        assertArrayEquals(printed(sheet(5, row(7, 40))), printed(sheet(5, row(7, 40))));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 15})
    void tooFewOrTooManyColumnsAreRefused(int columns) {
        assertThrows(IllegalArgumentException.class, () -> sheet(columns, row(7, 4)));
    }

    @Test
    void aSheetWithoutLinesIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> sheet(2, row(7, 0)));
    }
}
