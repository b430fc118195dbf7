package pippinry.pedigree.internal.kinship;

import static org.junit.jupiter.api.Assertions.assertEquals;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InbreedingTest {
    /** Exact fractions of the recurrences of Wright (1921); Falconer and Mackay (1996) Introduction to Quantitative Genetics, Table 5.1. */
    @ParameterizedTest
    @CsvSource({
        "selfing, S, 12",
        "full_sib, M, 12",
        "half_sib, m, 8",
        "backcross_noninbred, B, 12",
        "backcross_inbred, B, 12"
    })
    void regularMatingFollowsItsRecurrence(String system, String prefix, int generations) {
        NamedPedigree pedigree = NamedPedigree.read("pedigree-" + system + ".csv");
        for (NamedCsvRecord row : NamedPedigree.table("inbreeding-series.csv")) {
            int generation = Integer.parseInt(row.getField("generation"));
            if (generation == 0 || generation > generations) continue;
            double expected = fraction(row.getField(system));
            assertEquals(expected, pedigree.inbreeding(prefix + generation), 1e-14, system + " " + generation);
        }
    }

    private static double fraction(String text) {
        String[] parts = text.split("/");
        return Double.parseDouble(parts[0]) / (parts.length == 1 ? 1 : Double.parseDouble(parts[1]));
    }

    /** Counted by paths and by the tabular method in R, two separate programs; both exact. */
    @Test
    void namedCultivarsAgreeWithPathCounting() {
        NamedPedigree pedigree = NamedPedigree.read("named-cultivars.csv");
        for (NamedCsvRecord row : NamedPedigree.table("named-cultivars-coancestry.csv")) {
            double f = pedigree.coancestry(row.getField("a"), row.getField("b"));
            assertEquals(Double.parseDouble(row.getField("f")), f, 1e-14, row.toString());
        }
    }

    /** Eight parents used alike: group coancestry 0.1005859375, computed in R from the full matrix; exact. */
    @Test
    void groupCoancestryIsTheMeanOverAllPairs() {
        NamedPedigree pedigree = NamedPedigree.read("named-cultivars.csv");
        int[] group = pedigree.numbers("Gala", "Fuji", "Elstar", "Idared", "Empire", "Melrose", "Cortland", "Macoun");
        assertEquals(0.1005859375, pedigree.kinship().meanCoancestry(group), 1e-14);
        assertEquals(4.97087378640777, Founders.genomeEquivalents(pedigree.kinship(), group), 1e-12);
        double[] withEach = pedigree.kinship().coancestryWith(group);
        double mean = 0;
        for (int who : group) mean += withEach[who] / group.length;
        assertEquals(0.1005859375, mean, 1e-14);
    }

    /** Mrode (2014) Linear Models for the Prediction of Animal Breeding Values, 3rd ed., chapter 2, after Henderson (1976); recomputed in R. */
    @Test
    void sixIndividualsOfHendersonHaveTheirMatrix() {
        NamedPedigree pedigree = NamedPedigree.read("mrode-6.csv");
        for (NamedCsvRecord row : NamedPedigree.table("mrode-6-expected.csv")) {
            double expected = Double.parseDouble(row.getField("value"));
            String a = row.getField("a");
            String b = row.getField("b");
            if (row.getField("quantity").equals("A")) assertEquals(expected, 2 * pedigree.coancestry(a, b), 1e-12);
            if (row.getField("quantity").equals("F")) assertEquals(expected, pedigree.inbreeding(a), 1e-12);
        }
        assertEquals(-2.43166213526919, pedigree.kinship().logDeterminant(), 1e-12);
    }

    /** Mean F and log determinant of A as R 4.2.2 with Matrix 1.5-3 gave them (tabular method among the parents). */
    @ParameterizedTest
    @CsvSource({
        "bench-1000.csv, 0.015375, -622.36486194256",
        "bench-10000.csv, 0.03219921875, -6623.8166196441",
        "bench-10000f2.csv, 0.018850726318359, -6653.7811196996"
    })
    void largePedigreesAgreeWithR(String table, double meanInbreeding, double logDeterminant) {
        NamedPedigree pedigree = NamedPedigree.read(table);
        double sum = 0;
        for (String name : pedigree.names()) sum += pedigree.inbreeding(name);
        assertEquals(meanInbreeding, sum / pedigree.names().size(), 1e-13);
        assertEquals(logDeterminant, pedigree.kinship().logDeterminant(), 1e-13 * Math.abs(logDeterminant));
    }

    /** Computed in R by the tabular method from published parentages of apple cultivars, each row of the table with its basis. */
    @Test
    void publishedParentagesOfApplesGiveTheComputedValues() {
        NamedPedigree pedigree = NamedPedigree.read("cultivars.csv");
        for (NamedCsvRecord row : NamedPedigree.table("cultivars-expected.csv")) {
            double expected = Double.parseDouble(row.getField("value"));
            String a = row.getField("a");
            String b = row.getField("b");
            if (row.getField("quantity").startsWith("inbreeding")) {
                assertEquals(expected, pedigree.inbreeding(a), 1e-14, a);
            } else if (row.getField("quantity").startsWith("coancestry")) {
                assertEquals(expected, pedigree.coancestry(a, b), 1e-14, a + " " + b);
            }
        }
    }

    @Test
    void aSportIsTheSameGenotypeAsItsOrigin() {
        NamedPedigree pedigree = NamedPedigree.of("C: A B", "D: A B", "E: C D", "S: sport E", "SS: sport S", "X: SS E");
        assertEquals((1 + 0.25) / 2, pedigree.coancestry("S", "E"), 1e-15);
        assertEquals((1 + 0.25) / 2, pedigree.coancestry("SS", "S"), 1e-15);
        assertEquals(0.25, pedigree.inbreeding("SS"), 1e-15);
        assertEquals((1 + 0.25) / 2, pedigree.inbreeding("X"), 1e-15);
    }

    @Test
    void anUnknownParentIsANewUnrelatedFounderEachTime() {
        NamedPedigree pedigree = NamedPedigree.of("C: A unknown", "D: A unknown", "E: C D");
        assertEquals(0.125, pedigree.coancestry("C", "D"), 1e-15);
        assertEquals(0.125, pedigree.inbreeding("E"), 1e-15);
    }
}
