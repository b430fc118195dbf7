package pippinry.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** From flowers to seedlings nothing comes from nowhere, and since 2019 nothing goes without a word. */
class FunnelTest {

    private static List<NamedCsvRecord> boughs;
    private static List<NamedCsvRecord> losses;
    private static List<NamedCsvRecord> lots;

    @BeforeAll
    static void readTheTables() {
        boughs = Files.now("pollinations");
        losses = Files.now("losses");
        lots = Files.now("seedlots");
    }

    private static int number(NamedCsvRecord row, String column) {
        return row.getField(column).isEmpty() ? 0 : Integer.parseInt(row.getField(column));
    }

    private static int lost(String subject, Predicate<NamedCsvRecord> which) {
        return losses.stream()
                .filter(row -> row.getField("subject").equals(subject))
                .filter(which)
                .mapToInt(row -> number(row, "number"))
                .sum();
    }

    /** Crosses of the years that were kept here from the start. */
    private static boolean isKeptHere(String code) {
        return !code.isEmpty() && Integer.parseInt(code.substring(0, 2)) >= 19;
    }

    @Test
    void everyFlowerSetsOrIsLostAndEveryFruitIsPickedOrLost() {
        for (NamedCsvRecord bough : boughs) {
            if (isKeptHere(bough.getField("cross"))) {
                int gone = lost(bough.getField("tag"), row -> true);
                assertEquals(number(bough, "flowers"), number(bough, "harvested_fruits") + gone, bough.toString());
            }
        }
    }

    @Test
    void countsNeverGrow() {
        for (NamedCsvRecord bough : boughs) {
            boolean counted = !bough.getField("set_fruits").isEmpty();
            assertTrue(number(bough, "set_fruits") <= number(bough, "flowers"), bough.toString());
            assertTrue(!counted || number(bough, "harvested_fruits") <= number(bough, "set_fruits"), bough.toString());
        }
    }

    @Test
    void aLotHoldsTheFruitsOfItsCross() {
        Map<String, Integer> harvested = boughs.stream()
                .collect(Collectors.groupingBy(
                        row -> row.getField("cross"), Collectors.summingInt(row -> number(row, "harvested_fruits"))));
        for (NamedCsvRecord lot : lots) {
            if (!lot.getField("cross").isEmpty() && !lot.getField("code").endsWith("-2")) {
                int controls = boughs.stream()
                        .filter(row -> row.getField("cross").equals(lot.getField("cross")))
                        .filter(row -> row.getField("kind").startsWith("control"))
                        .mapToInt(row -> number(row, "harvested_fruits"))
                        .sum();
                assertEquals(harvested.get(lot.getField("cross")) - controls, number(lot, "fruits"), lot.toString());
            }
        }
    }

    @Test
    void seedsOfAFruitAreAtMostTen() {
        for (NamedCsvRecord lot : lots) {
            assertTrue(
                    lot.getField("fruits").isEmpty()
                            || number(lot, "seeds_full") + number(lot, "seeds_empty") <= 10 * number(lot, "fruits"),
                    lot.toString());
        }
    }

    @Test
    void everySeedSownComesUpOrIsLostAndEverySeedlingIsPottedOrLost() {
        for (NamedCsvRecord lot : lots) {
            if (isKeptHere(lot.getField("cross")) && !lot.getField("potted").isEmpty()) {
                String code = lot.getField("code");
                int below = lost(code, row -> row.getField("cause").equals("did not come up"));
                int above = lost(code, row -> List.of("damped off", "weak or without green", "slugs")
                        .contains(row.getField("cause")));
                assertEquals(number(lot, "sown"), number(lot, "emerged") + below, code);
                assertEquals(number(lot, "emerged"), number(lot, "potted") + above, code);
            }
        }
    }

    @Test
    void theLastEmergenceCountIsThatOfTheLot() {
        Map<String, Integer> counted = Files.now("emergence").stream()
                .collect(Collectors.toMap(
                        row -> row.getField("lot"), row -> number(row, "emerged"), (before, after) -> after));
        for (NamedCsvRecord lot : lots) {
            if (isKeptHere(lot.getField("cross"))) {
                assertEquals(number(lot, "emerged"), counted.getOrDefault(lot.getField("code"), 0), lot.toString());
            }
        }
    }

    @Test
    void everyPotHasANumber() {
        Map<String, Long> given = Files.now("genotypes").stream()
                .map(row -> row.getField("code"))
                .filter(TotalsTest::isSeedling)
                .collect(Collectors.groupingBy(TotalsTest::cross, Collectors.counting()));
        Map<String, Integer> potted = lots.stream()
                .filter(row -> !row.getField("cross").isEmpty() && number(row, "potted") > 0)
                .collect(Collectors.groupingBy(
                        row -> row.getField("cross"), Collectors.summingInt(row -> number(row, "potted"))));
        assertEquals(given.keySet(), potted.keySet());
        potted.forEach((cross, pots) -> assertEquals(pots.longValue(), given.get(cross), cross));
    }

    @Test
    void fruitOfASampleIsSharedOutWhole() {
        for (NamedCsvRecord sample : Files.now("samples")) {
            int shared = number(sample, "tasted") + number(sample, "pressed") + number(sample, "stored");
            assertTrue(shared <= number(sample, "fruits"), sample.toString());
        }
    }

    @Test
    void aPairThatCannotFertiliseGivesNoFruit() {
        assertEquals(
                0,
                boughs.stream()
                        .filter(row -> row.getField("cross").equals("12-003"))
                        .mapToInt(row -> number(row, "harvested_fruits"))
                        .sum());
    }

    @Test
    void someLossesHaveNoCause() {
        assertTrue(Files.now("plants").stream()
                .anyMatch(row -> row.getField("status").equals("dead")
                        && row.getField("cause").isEmpty()));
    }
}
