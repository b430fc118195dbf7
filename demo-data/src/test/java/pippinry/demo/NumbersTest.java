package pippinry.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pippinry.model.number.CheckCharacter;

class NumbersTest {

    /** The first is the worked example of the UK Blood Transfusion Services Red Book, Annex 2. */
    @ParameterizedTest
    @CsvSource({"G123498654321, H", "26-014-073, Y", "26-014-073B, 8"})
    void checkCharactersAreThoseOfTheStandard(String number, char check) {
        assertEquals(check, Check.of(number));
    }

    @ParameterizedTest
    @CsvSource({"genotypes, code", "plants, tag", "pollinations, tag"})
    void noNumberGivenHasAStarForItsCheck(String table, String column) {
        for (NamedCsvRecord row : Files.now(table)) {
            assertNotEquals('*', CheckCharacter.of(row.getField(column)), row.getField(column));
        }
    }

    @Test
    void noSeedlingHasACopyAWithAStar() {
        Files.now("genotypes").stream()
                .map(row -> row.getField("code"))
                .filter(TotalsTest::isSeedling)
                .forEach(code -> assertNotEquals('*', CheckCharacter.of(code + "A"), code));
    }

    /** From 1 to the highest number of each cross, every number is a seedling or stands as never given. */
    @Test
    void everyNumberSkippedIsOnFileAsNeverGiven() {
        Set<String> skipped = Files.now("nevergiven").stream()
                .map(row -> row.getField("number"))
                .collect(Collectors.toSet());
        Map<String, List<String>> families = Files.now("genotypes").stream()
                .map(row -> row.getField("code"))
                .filter(TotalsTest::isSeedling)
                .collect(Collectors.groupingBy(TotalsTest::cross));
        families.forEach((cross, given) -> {
            int highest = given.stream()
                    .mapToInt(code -> Integer.parseInt(code.substring(7)))
                    .max()
                    .orElseThrow();
            for (int number = 1; number <= highest; number++) {
                String code = "%s-%03d".formatted(cross, number);
                assertTrue(given.contains(code) != (skipped.contains(code) || skipped.contains(code + "A")), code);
            }
        });
    }

    @Test
    void copiesAreOfTheirGenotype() {
        for (NamedCsvRecord row : Files.now("plants")) {
            assertTrue(row.getField("tag").matches(row.getField("genotype") + "[A-Z]"), row.getField("tag"));
        }
    }
}
