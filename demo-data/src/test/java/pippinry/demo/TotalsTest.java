package pippinry.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Larkmoor is as large as it is said to be. */
class TotalsTest {

    private static List<NamedCsvRecord> genotypes;
    private static Map<String, NamedCsvRecord> plants;
    private static List<NamedCsvRecord> standing;

    @BeforeAll
    static void readTheTables() {
        genotypes = Files.now("genotypes");
        plants = Files.now("plants").stream().collect(Collectors.toMap(row -> row.getField("tag"), row -> row));
        standing = Files.now("places").stream()
                .filter(row -> row.getField("to").isEmpty())
                .toList();
    }

    @Test
    void aboutTwelveHundredSeedlingsComeOfFourteenCrosses() {
        List<NamedCsvRecord> seedlings = genotypes.stream()
                .filter(row -> isSeedling(row.getField("code")))
                .toList();
        assertTrue(Math.abs(seedlings.size() - 1200) < 40, "seedlings: " + seedlings.size());
        assertEquals(
                14,
                seedlings.stream()
                        .map(row -> cross(row.getField("code")))
                        .distinct()
                        .count());
    }

    @Test
    void twoOfTheirOwnSeedlingsAreParentsOfLaterOnes() {
        Set<String> own = genotypes.stream()
                .flatMap(row -> Stream.of(row.getField("seed_parent"), row.getField("pollen_parent")))
                .filter(TotalsTest::isSeedling)
                .collect(Collectors.toSet());
        assertEquals(2, own.size(), own.toString());
    }

    @Test
    void fourHundredAndTwentyTreesStandInTheGround() {
        assertEquals(420, count(row -> !List.of("SB", "NUR").contains(row.getField("block"))));
    }

    @Test
    void sixtySeedlingsHaveFruited() {
        Set<String> fruited = new HashSet<>();
        for (NamedCsvRecord score : Files.now("scores")) {
            if (score.getField("trait").equals("first_fruit")) {
                fruited.add(plants.get(score.getField("subject")).getField("genotype"));
            }
        }
        assertEquals(60, fruited.size());
    }

    @Test
    void oneOldTreeCarriesTwentyFourKinds() {
        List<NamedCsvRecord> limbs = limbsOn("BOSA");
        assertEquals(24, limbs.size());
        assertEquals(
                24,
                limbs.stream().map(row -> row.getField("genotype")).distinct().count());
    }

    @Test
    void someCordonsCarryTwoKinds() {
        long two = standing.stream()
                .filter(row -> row.getField("block").equals("PAR"))
                .filter(row -> limbsOn(row.getField("plant")).size() == 1)
                .count();
        assertEquals(4, two);
    }

    @Test
    void sixCheckTreesStandAmongTheSeedlings() {
        assertEquals(
                6,
                count(row -> List.of("A", "B", "C").contains(row.getField("block"))
                        && plants.get(row.getField("plant")).getField("note").startsWith("check tree:")));
    }

    @Test
    void twoTrialsHoldSelectionsInRows() {
        for (String block : List.of("T1", "T2")) {
            Map<String, Long> copies = standing.stream()
                    .filter(row -> row.getField("block").equals(block))
                    .collect(Collectors.groupingBy(
                            row -> plants.get(row.getField("plant")).getField("genotype"), Collectors.counting()));
            assertTrue(copies.size() >= 6, block + copies);
            assertTrue(copies.values().stream().allMatch(many -> many >= 2 && many <= 4), block + copies);
        }
    }

    @Test
    void theStoolBedHoldsDwarfingStock() {
        assertEquals(20, count(row -> row.getField("block").equals("SB")));
    }

    @Test
    void theWholeIsUnderTenMegabytes() throws IOException {
        try (Stream<java.nio.file.Path> files = java.nio.file.Files.walk(Files.DEMO.resolve("larkmoor"))) {
            assertTrue(files.mapToLong(file -> file.toFile().length()).sum() < 10_000_000);
        }
    }

    @Test
    void seedIsInTheColdAndComingUpOnTheLastDay() {
        assertTrue(Files.now("chilling").stream()
                .anyMatch(row -> row.getField("to").isEmpty()));
        assertTrue(Files.now("seedlots").stream()
                .anyMatch(row -> row.getField("sown_on").startsWith("2026")
                        && !row.getField("emerged").isEmpty()));
    }

    @Test
    void oneNeutralTagIsStillUnbound() {
        List<String> unbound = Files.now("pollinations").stream()
                .filter(row -> row.getField("cross").isEmpty())
                .map(row -> row.getField("tag"))
                .toList();
        assertEquals(1, unbound.size(), unbound.toString());
        assertTrue(unbound.get(0).startsWith("T-"));
    }

    private static long count(Predicate<NamedCsvRecord> which) {
        return standing.stream().filter(which).count();
    }

    private static List<NamedCsvRecord> limbsOn(String host) {
        return plants.values().stream()
                .filter(row -> row.getField("host").equals(host)
                        && row.getField("status").equals("alive"))
                .toList();
    }

    static boolean isSeedling(String code) {
        return code.matches("\\d\\d-\\d{3}-\\d{3}");
    }

    static String cross(String code) {
        return code.substring(0, 6);
    }
}
