package pippinry.labels.internal.code;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import uk.org.okapibarcode.backend.Code128;
import uk.org.okapibarcode.backend.DataMatrix;
import uk.org.okapibarcode.backend.QrCode;

class CodeWriterTest {
    private final CodeWriter writer = new CodeWriter();

    /** Source: worked example of the Data Matrix standard (ISO/IEC 16022, annex of the encodation example), recomputed. */
    @Test
    void dataMatrixOf123456HasTheWorkedCodeWords() {
        var code = new DataMatrix() {
            int[] words() {
                return getCodewords();
            }
        };
        code.setContent("123456");
        assertArrayEquals(new int[] {142, 164, 186, 114, 25, 5, 88, 102}, code.words());
    }

    /** Source: worked example of the QR standard (ISO/IEC 18004, "01234567", version 1-M), recomputed. */
    @Test
    void qrOf01234567HasTheWorkedCodeWords() {
        String words = QrReading.codeWords(QrReading.of(picture(levelM(), "01234567")));
        assertEquals(
                "10 20 0C 56 61 80 EC 11 EC 11 EC 11 EC 11 EC 11 A5 24 D4 C1 ED 36 C7 87 2C 55",
                words,
                "16 data and 10 correction code words");
    }

    /** Format words for level M: mask 010 and mask 101, same source. */
    @Test
    void qrFormatWordsAreThoseOfLevelM() {
        QrReading reading = QrReading.of(picture(levelM(), "01234567"));
        assertTrue(reading.format().matches("101111001111100|100000011001110|.{15}"));
        if (reading.mask() == 2) {
            assertEquals("101111001111100", reading.format());
        } else if (reading.mask() == 5) {
            assertEquals("100000011001110", reading.format());
        }
    }

    /** Sums 878 mod 103 = 54 in set A; source: worked example of Code 128 "PJJ123C", recomputed. */
    @Test
    void code128OfPJJ123CHasCheck54() {
        List<Integer> values = new OpenCode128(Code128.CodeSet.A, "PJJ123C").values();
        assertEquals(List.of(103, 48, 42, 42, 17, 18, 19, 35, 54), values);
    }

    /** Start B, A I M, code C, 12 34; 1014 mod 103 = 87, recomputed. */
    @Test
    void code128ChangesToPairsOfDigits() {
        List<Integer> values = new OpenCode128(Code128.CodeSet.ABC, "AIM1234").values();
        assertEquals(List.of(104, 33, 41, 45, 99, 12, 34, 87), values);
    }

    /** Sizes: ISO/IEC 18004 version 1 and 2, ISO/IEC 16022, and 11 modules a character, 13 the stop (ISO/IEC 15417). */
    @ParameterizedTest
    @CsvSource({
        "QR, 26-014-073=Y, 21, 29",
        "QR, GOLDEN-DELICIOUS=Y, 25, 33",
        "DATA_MATRIX, 123456, 10, 12",
        "DATA_MATRIX, 26-014-073=Y, 16, 18",
        "CODE_128, ABCDEF, 101, 121"
    })
    void codesAreAsSmallAsTheirStandardAllows(Symbology symbology, String text, int columns, int withQuiet) {
        CodePicture picture = writer.write(symbology, text);
        assertEquals(columns, picture.columns());
        assertEquals(withQuiet, picture.columnsWithQuiet());
    }

    @ParameterizedTest
    @CsvSource({"QR, ''", "CODE_128, Käfer", "DATA_MATRIX, 'a\tb'"})
    void whatIsNoPlainTextIsRefused(Symbology symbology, String text) {
        assertThrows(IllegalArgumentException.class, () -> writer.write(symbology, text));
    }

    private static QrCode levelM() {
        QrCode code = new QrCode() {
            {
                improveEccLevelIfPossible = false;
            }
        };
        code.setPreferredEccLevel(QrCode.EccLevel.M);
        return code;
    }

    private static CodePicture picture(QrCode code, String text) {
        code.setContent(text);
        return new CodePicture(
                Symbology.QR,
                text,
                code.getWidth(),
                code.getHeight(),
                code.getRectangles().stream()
                        .map(r -> new Bar((int) r.x, (int) r.y, (int) r.width, (int) r.height))
                        .toList());
    }

    /** Gives the values of the characters drawn, the stop left off. */
    private static final class OpenCode128 extends Code128 {
        OpenCode128(CodeSet set, String text) {
            super(set);
            setContent(text);
        }

        List<Integer> values() {
            return Arrays.stream(getCodewords())
                    .mapToObj(Integer::toString)
                    .filter(widths -> widths.length() == 6)
                    .map(Arrays.asList(CODE128_TABLE)::indexOf)
                    .filter(value -> value >= 0)
                    .toList();
        }
    }
}
