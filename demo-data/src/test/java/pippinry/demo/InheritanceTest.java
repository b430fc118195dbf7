package pippinry.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The truth obeys Mendel, the rule of S, and the infinitesimal model. */
class InheritanceTest {

    private static Map<String, NamedCsvRecord> genes;
    private static Map<String, NamedCsvRecord> parents;

    @BeforeAll
    static void readTheTruth() {
        genes = byCode("genes.csv");
        parents = byCode("parents.csv");
    }

    private static Map<String, NamedCsvRecord> byCode(String file) {
        return Files.read(Files.TRUTH.resolve(file)).stream()
                .collect(Collectors.toMap(row -> row.getField("genotype"), row -> row));
    }

    private static List<String> alleles(String code, String column) {
        return List.of(genes.get(code).getField(column).split("/"));
    }

    @Test
    void everySeedlingHasItsTruth() {
        long seedlings = Files.now("genotypes").stream()
                .filter(row -> TotalsTest.isSeedling(row.getField("code")))
                .peek(row -> assertTrue(genes.containsKey(row.getField("code")), row.getField("code")))
                .count();
        assertEquals(seedlings, parents.size());
    }

    /** One allele of the seed parent; the other came with pollen that the style does not stop, or by selfing. */
    @Test
    void sAllelesOfEverySeedlingArePossible() {
        for (NamedCsvRecord row : parents.values()) {
            List<String> own = alleles(row.getField("genotype"), "s_alleles");
            List<String> style = alleles(row.getField("seed_parent"), "s_alleles");
            String pollen = row.getField("pollen_parent");
            boolean possible = from(own.get(0), own.get(1), style, row.getField("seed_parent"), pollen)
                    || from(own.get(1), own.get(0), style, row.getField("seed_parent"), pollen);
            assertTrue(possible, row + " " + own);
        }
    }

    private static boolean from(String ofSeed, String ofPollen, List<String> style, String seed, String pollen) {
        boolean selfed = seed.equals(pollen);
        boolean arrives = selfed || !style.contains(ofPollen);
        boolean carried = pollen.equals("op") || alleles(pollen, "s_alleles").contains(ofPollen);
        return style.contains(ofSeed) && arrives && carried;
    }

    @Test
    void oneAlleleOfEachGeneComesFromEachParent() {
        for (NamedCsvRecord row : parents.values()) {
            for (String locus : List.of("rvi6", "acs1", "ma", "myb1")) {
                List<String> own = alleles(row.getField("genotype"), locus);
                assertTrue(alleles(row.getField("seed_parent"), locus).contains(own.get(0)), row + " " + locus);
                String pollen = row.getField("pollen_parent");
                assertTrue(pollen.equals("op") || alleles(pollen, locus).contains(own.get(1)), row + " " + locus);
            }
        }
    }

    @Test
    void halfOfAFamilyOfOneCarrierIsResistant() {
        long family = parents.keySet().stream()
                .filter(code -> code.startsWith("22-014"))
                .count();
        long resistant = parents.keySet().stream()
                .filter(code -> code.startsWith("22-014"))
                .filter(code -> alleles(code, "rvi6").contains("Rvi6"))
                .count();
        // Three standard errors of a half.
        assertTrue(Math.abs(resistant - family / 2.0) < 1.5 * Math.sqrt(family), resistant + " of " + family);
    }

    /** Within a family of two parents that are not inbred, half the additive variance is left (Bulmer 1980). */
    @Test
    void breedingValuesSpreadWithinAFamilyAsTheInfinitesimalModelSays() {
        Map<String, List<Double>> values = new HashMap<>();
        Files.read(Files.TRUTH.resolve("breeding-values.csv")).stream()
                .filter(row -> row.getField("genotype").startsWith("24-016"))
                .forEach(row -> values.computeIfAbsent(row.getField("trait"), any -> new java.util.ArrayList<>())
                        .add(Double.valueOf(row.getField("breeding_value"))));
        for (Trait trait : Trait.values()) {
            double expected = trait.geneticSd() * Math.sqrt(0.5);
            assertEquals(expected, sd(values.get(trait.word())), 0.18 * expected, trait.word());
        }
    }

    private static double sd(List<Double> values) {
        double mean = values.stream().mapToDouble(value -> value).average().orElseThrow();
        return Math.sqrt(values.stream()
                        .mapToDouble(value -> (value - mean) * (value - mean))
                        .sum()
                / (values.size() - 1));
    }

    @Test
    void theRecordsAreWrongWhereTheMistakesSayAndNowhereElse() {
        List<String> told = Files.read(Files.TRUTH.resolve("mistakes.csv")).stream()
                .map(row -> row.getField("number"))
                .filter(TotalsTest::isSeedling)
                .toList();
        for (NamedCsvRecord row : Files.now("genotypes")) {
            String code = row.getField("code");
            if (TotalsTest.isSeedling(code)) {
                NamedCsvRecord truth = parents.get(code);
                boolean right = row.getField("seed_parent").equals(truth.getField("seed_parent"))
                        && List.of(row.getField("pollen_parent").split("\\|"))
                                .contains(truth.getField("pollen_parent"));
                // Of two candidates one is right, whichever it is.
                boolean wrong =
                        told.contains(code) && !row.getField("pollen_parent").contains("|");
                assertNotEquals(right, wrong, code);
            }
        }
    }

    @Test
    void oneSeedlingIsASelf() {
        assertEquals(
                1,
                parents.values().stream()
                        .filter(row -> row.getField("seed_parent").equals(row.getField("pollen_parent")))
                        .count());
    }
}
