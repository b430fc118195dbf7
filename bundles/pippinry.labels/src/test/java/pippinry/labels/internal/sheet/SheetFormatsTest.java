package pippinry.labels.internal.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import pippinry.labels.internal.paper.Box;

class SheetFormatsTest {
    private static final String HEADER =
            "sheet_id,page_w_mm,page_h_mm,cols,rows,label_w_mm,label_h_mm,left_margin_mm,top_margin_mm,pitch_x_mm,"
                    + "pitch_y_mm,basis\n";

    private final SheetFormats formats = SheetFormats.shipped();

    static List<SheetFormat> all() {
        return SheetFormats.shipped().all();
    }

    @Test
    void sixteenSheetsShip() {
        assertEquals(16, formats.all().size());
    }

    @ParameterizedTest
    @MethodSource("all")
    void everySheetIsAsFarFromTheLeftAsFromTheRight(SheetFormat format) {
        Box last = format.label(format.count() - 1);
        assertEquals(format.left(), format.pageWidth() - last.right(), 0.02);
        assertEquals(format.top(), format.pageHeight() - last.bottom(), 0.02);
    }

    @ParameterizedTest
    @MethodSource("all")
    void everySheetSaysWhereItsMeasuresComeFrom(SheetFormat format) {
        assertFalse(format.basis().isBlank());
    }

    /** Source: printreadykit.pages.dev, label templates, A4 with 21 labels. */
    @Test
    void twentyOneLabelsLieAsPublished() {
        SheetFormat format = formats.named("a4-21");
        assertEquals(new Box(7.25, 15.15, 63.5, 38.1), format.label(0));
        assertEquals(15.15 + 38.1, format.label(3).y(), 1e-9);
        assertEquals(7.25 + 66.0, format.label(1).x(), 1e-9);
    }

    @Test
    void aRollHasOneLabelToAPage() {
        SheetFormat roll = formats.named("roll-57x32.5");
        assertEquals(1, roll.count());
        assertEquals(new Box(0, 0, 57, 32.5), roll.label(0));
        assertEquals("roll-57x32.5 (57 x 32.5 mm)", roll.toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"A4-22", "", "roll-3x50", "roll-abcx5"})
    void anUnknownSheetIsRefused(String name) {
        assertThrows(IllegalArgumentException.class, () -> formats.named(name));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "X,210,297,3,7,63.5,38.1,7.25,15.15,abc,38.1,me | own.csv line 2, column pitch_x_mm: 'abc'; expected millimetres such as 63.5",
                "X,210,297,3,7,63.5,38.1,7.25,15.15,60,38.1,me | own.csv line 2: expected that labels of a row do not",
                "X,210,297,4,7,63.5,38.1,7.25,15.15,66,38.1,me | own.csv line 2: expected that the last label of a row",
                ",210,297,3,7,63.5,38.1,7.25,15.15,66,38.1,me | own.csv line 2, column sheet_id: ''; expected a name",
                "X,210,297,3.5,7,63.5,38.1,7.25,15.15,66,38.1,me | own.csv line 2, column cols: '3.5'; expected a whole"
            })
    void aBadRowIsNamedWithLineAndColumn(String row, String start) {
        var refused = assertThrows(
                IllegalArgumentException.class, () -> SheetTable.read(new StringReader(HEADER + row), "own.csv"));
        assertTrue(refused.getMessage().startsWith(start), refused.getMessage());
    }

    @Test
    void aPersonsOwnSheetMayNotTakeAnothersName() {
        List<SheetFormat> own =
                SheetTable.read(new StringReader(HEADER + "a4-21,210,297,1,1,100,100,10,10,100,100,me"), "own.csv");
        assertThrows(IllegalArgumentException.class, () -> formats.with(own));
    }
}
