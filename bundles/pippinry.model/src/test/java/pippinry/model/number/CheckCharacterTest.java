package pippinry.model.number;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CheckCharacterTest {

    /** The first is worked out in the UK Blood Transfusion Services' Red Book, annex 2 (ISBT 128); the others are ours. */
    @ParameterizedTest
    @CsvSource({"G123498654321,H", "26-014-073,Y", "26-014-073B,8", "26-014-073b,8", "26014073,Y"})
    void checkIsThatOfTheStandard(String number, char check) {
        assertEquals(check, CheckCharacter.of(number));
    }

    @Test
    void everyWrongCharacterAndEverySwapOfNeighboursIsCaught() {
        String number = "26-014-073B";
        for (int i = 0; i < number.length(); i++) {
            for (char other : "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ".toCharArray()) {
                if (number.charAt(i) != '-' && other != number.charAt(i)) {
                    assertNotEquals('8', CheckCharacter.of(number.substring(0, i) + other + number.substring(i + 1)));
                }
            }
        }
        String bare = number.replace("-", "");
        for (int i = 1; i < bare.length(); i++) {
            if (bare.charAt(i) != bare.charAt(i - 1)) {
                String swapped = bare.substring(0, i - 1) + bare.charAt(i) + bare.charAt(i - 1) + bare.substring(i + 1);
                assertNotEquals('8', CheckCharacter.of(swapped), swapped);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "--", "ÄPFEL", "26_014"})
    void numbersWithOtherSignsAreRefused(String number) {
        assertThrows(IllegalArgumentException.class, () -> CheckCharacter.of(number));
    }

    @Test
    void aNumberIsReadWithItsCheckAfterTheEqualsSign() {
        assertTrue(Reading.of(" 26-014-073=y ").isValid());
        assertFalse(Reading.of("26-014-073=X").isValid());
        assertEquals(Optional.empty(), Reading.of("26-014-073B").given());
        assertEquals("26-014-073B=8", Reading.of("26-014-073b").toString());
    }
}
