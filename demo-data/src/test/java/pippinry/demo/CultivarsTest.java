package pippinry.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Only what the reference knows is on file of real cultivars, and nothing that it calls doubtful. */
class CultivarsTest {

    private static final Set<String> STOCKS = Set.of("M.9", "M.27", "MM.106");

    private static List<NamedCsvRecord> named() {
        return Files.now("genotypes").stream()
                .filter(row -> !TotalsTest.isSeedling(row.getField("code")))
                .toList();
    }

    /** The list holds every name in pedigrees.csv, s-alleles.csv and parent-genotypes.csv of the reference on genetics. */
    @Test
    void everyCultivarIsInTheReference() throws IOException {
        try (InputStream list = CultivarsTest.class.getResourceAsStream("cultivars-in-the-reference.txt")) {
            Set<String> known = new String(list.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .collect(Collectors.toSet());
            for (NamedCsvRecord row : named()) {
                String name = row.getField("name");
                assertTrue(known.contains(name) || STOCKS.contains(name), name);
            }
        }
    }

    /** Rows of s-alleles.csv and pedigrees.csv with certainty doubtful: these have no S-alleles, or no parents. */
    @Test
    void doubtfulFactsAreNotOnFile() {
        Set<String> noAlleles = Set.of("Discovery", "Macoun", "Liberty");
        Set<String> codes = named().stream()
                .filter(row -> noAlleles.contains(row.getField("name")))
                .map(row -> row.getField("code"))
                .collect(Collectors.toSet());
        assertFalse(Files.now("alleles").stream()
                .anyMatch(row -> codes.contains(row.getField("genotype"))
                        && row.getField("locus").equals("S")));
        assertEquals(
                "",
                named().stream()
                        .filter(row -> row.getField("name").equals("PRI 14-510"))
                        .findFirst()
                        .orElseThrow()
                        .getField("seed_parent"));
    }

    @Test
    void everyAlleleOnFileSaysWhereItIsFrom() {
        Files.now("alleles")
                .forEach(row -> assertFalse(
                        row.getField("basis").isEmpty()
                                || row.getField("source").isEmpty(),
                        row.toString()));
    }
}
