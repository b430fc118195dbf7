package pippinry.labels.internal.tag;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.zxing.NotFoundException;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import pippinry.labels.internal.code.Bar;
import pippinry.labels.internal.code.CodePicture;
import pippinry.labels.internal.code.Symbology;
import pippinry.labels.internal.paper.Box;
import pippinry.labels.internal.paper.Dots;
import pippinry.labels.internal.sheet.SheetFormat;
import pippinry.labels.internal.sheet.SheetFormats;
import pippinry.model.number.CheckCharacter;

class TagPrintingTest {
    private static final SheetFormats FORMATS = SheetFormats.shipped();
    private static final List<String> CROSS = List.of("♀ Golden Delicious × ♂ Prima", "2026 · row 7, place 9");

    private static Tag tag(String number, List<String> lines) {
        return new Tag(number, Optional.of(String.valueOf(CheckCharacter.of(number))), lines);
    }

    private static List<Tag> mixed() {
        return List.of(
                tag("26-014-073", CROSS),
                tag("26-014-074B", CROSS),
                tag("26-014/3", List.of("♀ Jonathan × ♂ Priscilla", "limb 4, 12 flowers")),
                tag("GOLD", List.of("Golden Delicious")),
                tag("T-0417", List.of()));
    }

    private static TagStyle style(Symbology symbology) {
        return new TagStyle(Optional.of(symbology), new Dots(300), 0.7);
    }

    /** Every sheet with QR codes, and the others where they are tightest and where they are largest. */
    static Stream<Object[]> sheetsAndCodes() {
        Stream<Object[]> qr = FORMATS.all().stream().map(format -> new Object[] {format, Symbology.QR});
        Stream<Object[]> dataMatrix = Stream.of("A4-189", "LTR-80", "A4-65", "A4-8")
                .map(name -> new Object[] {FORMATS.named(name), Symbology.DATA_MATRIX});
        Stream<Object[]> code128 = Stream.of("A4-40", "A4-21", "LTR-6")
                .map(name -> new Object[] {FORMATS.named(name), Symbology.CODE_128});
        return Stream.of(qr, dataMatrix, code128).flatMap(all -> all);
    }

    @ParameterizedTest
    @MethodSource("sheetsAndCodes")
    void everyCodeIsReadAndHasItsQuietZoneAndWholePixels(SheetFormat format, Symbology symbology) throws Exception {
        try (Printed printed = Printed.of(mixed(), style(symbology), Placing.on(format))) {
            List<BufferedImage> pages =
                    IntStream.range(0, printed.pages()).mapToObj(printed::page).toList();
            for (Printed.Placed placed : printed.placed) {
                BufferedImage page = pages.get(placed.page());
                assertEquals(placed.laid().tag().code(), read(page, placed, symbology));
                assertDrawnInWholePixels(page, placed);
            }
            assertLettersStayInTheirLabel(printed);
        }
    }

    private static String read(BufferedImage page, Printed.Placed placed, Symbology symbology)
            throws NotFoundException {
        // The reader's Data Matrix finder starts at the middle of the picture, so it is shown the code and its quiet
        // zone.
        Box seen = symbology == Symbology.DATA_MATRIX ? placed.codeBox() : placed.label();
        return Printed.decoded(Printed.part(page, seen), symbology);
    }

    private static void assertDrawnInWholePixels(BufferedImage page, Printed.Placed placed) {
        CodeSpot spot = placed.laid().code().orElseThrow();
        boolean[][] dark = modules(spot.picture());
        int module = spot.moduleDots();
        int left = pixel(placed.label().x() + spot.x());
        int top = pixel(placed.label().y() + spot.y());
        int down = spot.picture().symbology().isLinear() ? (int) (spot.barHeight() * Printed.DPI / 25.4) - 1 : module;
        int beside = spot.picture().symbology().quietBeside();
        int above = spot.picture().symbology().quietAbove();
        for (int row = -above; row < spot.picture().rows() + above; row++) {
            for (int column = -beside; column < spot.picture().columns() + beside; column++) {
                boolean inside =
                        row >= 0 && row < dark.length && column >= 0 && column < dark[0].length && dark[row][column];
                assertUniform(page, left + column * module, top + row * down, module, down, inside, placed);
            }
        }
        assertTrue(
                placed.label().holds(placed.codeBox()),
                "the quiet zone of " + placed.laid().tag().code() + " is on its label");
    }

    private static int pixel(double mm) {
        return (int) Math.round(mm * Printed.DPI / 25.4);
    }

    private static boolean[][] modules(CodePicture picture) {
        boolean[][] dark = new boolean[picture.rows()][picture.columns()];
        for (Bar bar : picture.bars()) {
            for (int y = bar.y(); y < bar.y() + bar.height(); y++) {
                Arrays.fill(dark[y], bar.x(), bar.x() + bar.width(), true);
            }
        }
        return dark;
    }

    private static void assertUniform(
            BufferedImage page, int x, int y, int width, int height, boolean dark, Printed.Placed placed) {
        for (int dy = 0; dy < height; dy++) {
            for (int dx = 0; dx < width; dx++) {
                int light = page.getRaster().getSample(x + dx, y + dy, 0);
                if (light != (dark ? 0 : 255)) {
                    throw new AssertionError("Pixel " + (x + dx) + ", " + (y + dy) + " of "
                            + placed.laid().tag().code() + " is " + light + ", module should be "
                            + (dark ? "dark" : "light"));
                }
            }
        }
    }

    private static void assertLettersStayInTheirLabel(Printed printed) {
        for (int page = 0; page < printed.pages(); page++) {
            int here = page;
            List<Printed.Placed> labels = printed.placed.stream()
                    .filter(placed -> placed.page() == here)
                    .toList();
            for (Printed.Letter letter : printed.letters(page)) {
                assertTrue(
                        labels.stream()
                                .anyMatch(placed ->
                                        placed.label().holds(letter.box()) && apart(placed.codeBox(), letter.box())),
                        "letter " + letter + " leaves its label or stands in a code");
            }
        }
    }

    private static boolean apart(Box code, Box letter) {
        double hair = 0.1;
        return letter.x() > code.right() - hair
                || letter.right() < code.x() + hair
                || letter.y() > code.bottom() - hair
                || letter.bottom() < code.y() + hair;
    }

    @Test
    void aFullSheetIsReadFromItsFirstFreeLabelOn() throws Exception {
        SheetFormat format = FORMATS.named("A4-24");
        List<Tag> tags = IntStream.rangeClosed(1, 30)
                .mapToObj(n -> tag("26-014-%03d".formatted(n), CROSS))
                .toList();
        Placing placing = new Placing(format, 20, 1, 1.5, -0.8, Marks.CORNERS);
        try (Printed printed = Printed.of(tags, style(Symbology.QR), placing)) {
            assertEquals(3, printed.pages());
            assertEquals(OptionalInt.of(2), printed.answer.nextFree());
            List<String> read = new ArrayList<>();
            for (Printed.Placed placed : printed.placed) {
                read.add(Printed.decoded(Printed.part(printed.page(placed.page()), placed.label()), Symbology.QR));
            }
            assertEquals(tags.stream().map(Tag::code).toList(), read);
        }
    }

    @Test
    void theSameTagsGiveTheSameBytes() {
        try (Printed once = Printed.of(mixed(), TagStyle.usual(), Placing.on(FORMATS.named("A4-21")));
                Printed again = Printed.of(mixed(), TagStyle.usual(), Placing.on(FORMATS.named("A4-21")))) {
            assertArrayEquals(once.bytes, again.bytes);
        }
    }

    @Test
    void copiesStandSideBySide() throws IOException {
        Placing placing = new Placing(FORMATS.named("A4-21"), 1, 2, 0, 0, Marks.NONE);
        try (Printed printed = Printed.of(List.of(tag("26-014-073", CROSS)), TagStyle.usual(), placing)) {
            assertEquals(2, printed.answer.labels());
            assertEquals(3, printed.text().split("26-014-073", -1).length);
        }
    }

    @Test
    void lettersOfOtherAlphabetsArePrinted() throws IOException {
        List<String> lines = List.of("Жигулёвское × Μήλο ♀♂", "Gräfin, Šampion, Filippa");
        try (Printed printed =
                Printed.of(List.of(tag("26-014-073", lines)), TagStyle.usual(), Placing.on(FORMATS.named("A4-8")))) {
            assertTrue(printed.text().contains("Жигулёвское × Μήλο ♀♂"), printed.text());
            assertTrue(printed.text().contains("Gräfin, Šampion, Filippa"), printed.text());
            assertEquals(List.of(), printed.answer.warnings());
        }
    }

    @Test
    void aSignTheFontLacksBecomesABoxAndIsTold() throws IOException {
        try (Printed printed = Printed.of(
                List.of(tag("26-014-073", List.of("林檎 🍎"))), TagStyle.usual(), Placing.on(FORMATS.named("A4-21")))) {
            assertTrue(printed.text().contains("□□ □"), printed.text());
            assertEquals(3, printed.answer.warnings().size());
            assertTrue(printed.answer.warnings().get(0).contains("The font has no sign"));
        }
    }

    @Test
    void textThatFindsNoRoomIsLeftOffAndTold() throws IOException {
        List<String> lines =
                List.of("♀ Golden Delicious × ♂ Prima, twelve flowers on the lowest limb to the south", "2026");
        try (Printed printed =
                Printed.of(List.of(tag("26-014-073", lines)), TagStyle.usual(), Placing.on(FORMATS.named("A4-189")))) {
            assertFalse(printed.answer.warnings().isEmpty());
            assertLettersStayInTheirLabel(printed);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "A4-65, CODE_128, A4-40 (52.5 x 29.7 mm)",
        "A4-189, CODE_128, On this label a QR code or a Data Matrix would fit",
        "roll-8x8, QR, A4-189 (25.4 x 10 mm)"
    })
    void whatDoesNotFitIsRefusedWithWhatWouldDo(String sheet, Symbology symbology, String told) {
        var refused = assertThrows(
                DoesNotFit.class,
                () -> Printed.of(
                        List.of(tag("26-014-073", CROSS)), style(symbology), Placing.on(FORMATS.named(sheet))));
        assertTrue(refused.getMessage().contains("26-014-073="), refused.getMessage());
        assertTrue(refused.getMessage().contains(told), refused.getMessage());
    }

    @Test
    void aNumberTooSmallForItsDistanceIsTold() {
        TagStyle fromTheRow = new TagStyle(Optional.of(Symbology.QR), new Dots(300), 1.6);
        try (Printed printed =
                Printed.of(List.of(tag("26-014-073", CROSS)), fromTheRow, Placing.on(FORMATS.named("A4-65")))) {
            assertTrue(printed.answer.readableFrom() < 1.6);
            assertEquals(1, printed.answer.warnings().size());
        }
    }

    @ParameterizedTest
    @CsvSource({"0, 1, 0", "22, 1, 0", "1, 0, 0", "1, 1, 12", "1, 1, -40"})
    void placesOffTheSheetAreRefused(int start, int copies, double offset) {
        SheetFormat format = FORMATS.named("A4-21");
        assertThrows(IllegalArgumentException.class, () -> new Placing(format, start, copies, offset, 0, Marks.NONE));
    }

    @Test
    void largerLabelsCarryLargerNumbers() {
        double before = 0;
        for (String sheet : List.of("A4-189", "A4-65", "A4-21", "A4-8")) {
            try (Printed printed =
                    Printed.of(List.of(tag("26-014-073", CROSS)), TagStyle.usual(), Placing.on(FORMATS.named(sheet)))) {
                assertTrue(printed.answer.readableFrom() > before, sheet);
                before = printed.answer.readableFrom();
            }
        }
    }
}
