package pippinry.pedigree.internal.kinship;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RelationshipInverseTest {
    /** Mrode (2014), chapter 2, after Henderson (1976); recomputed in R. Ignoring inbreeding would give 2 instead of 2.1333 at (6, 6). */
    @Test
    void sixIndividualsOfHendersonHaveTheirInverse() {
        NamedPedigree pedigree = NamedPedigree.read("mrode-6.csv");
        double[][] inverse = dense(pedigree, RelationshipInverse.of(pedigree.kinship()));
        for (NamedCsvRecord row : NamedPedigree.table("mrode-6-expected.csv")) {
            if (!row.getField("quantity").equals("Ainv")) continue;
            int a = pedigree.number(row.getField("a"));
            int b = pedigree.number(row.getField("b"));
            assertEquals(Double.parseDouble(row.getField("value")), inverse[a][b], 1e-10);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14})
    void timesTheMatrixItIsTheIdentity(long seed) {
        NamedPedigree pedigree = AverageRelationshipTest.tangled(new Random(seed), 40, 8);
        RelationshipInverse inverse = RelationshipInverse.of(pedigree.kinship());
        Kinship.Pairs pairs = pedigree.kinship().pairs();
        int n = inverse.size();
        double[][] product = new double[n][n];
        for (int column = 0; column < n; column++) {
            for (int at = inverse.columnStart()[column]; at < inverse.columnStart()[column + 1]; at++) {
                int row = inverse.rows()[at];
                double value = inverse.values()[at];
                for (int k = 0; k < n; k++) {
                    product[row][k] += value * 2 * pairs.coancestry(inverse.individual(column), inverse.individual(k));
                    if (row == column) continue;
                    product[column][k] += value * 2 * pairs.coancestry(inverse.individual(row), inverse.individual(k));
                }
            }
        }
        for (int r = 0; r < n; r++) for (int k = 0; k < n; k++) assertEquals(r == k ? 1 : 0, product[r][k], 1e-9);
    }

    @Test
    void largeFamiliesAddThreeElementsForEachSeedling() {
        NamedPedigree pedigree = NamedPedigree.read("bench-1000.csv");
        RelationshipInverse inverse = RelationshipInverse.of(pedigree.kinship());
        assertEquals(1000, inverse.size());
        assertTrue(inverse.elements() <= 3 * 1000 + 65 * 65, () -> "elements: " + inverse.elements());
    }

    @Test
    void aSeedlingThatIsTheSameAsEverySibStillHasAnInverse() {
        String[] rows = new String[60];
        for (int i = 0; i < rows.length; i++) rows[i] = "S" + (i + 1) + ": S" + i + " S" + i;
        Kinship kinship = NamedPedigree.of(rows).kinship();
        for (double value : RelationshipInverse.of(kinship).values()) assertTrue(Double.isFinite(value));
        assertTrue(Double.isFinite(kinship.logDeterminant()));
    }

    private static double[][] dense(NamedPedigree pedigree, RelationshipInverse inverse) {
        double[][] dense = new double[pedigree.names().size()][pedigree.names().size()];
        for (int column = 0; column < inverse.size(); column++) {
            for (int at = inverse.columnStart()[column]; at < inverse.columnStart()[column + 1]; at++) {
                int a = inverse.individual(column);
                int b = inverse.individual(inverse.rows()[at]);
                dense[a][b] = inverse.values()[at];
                dense[b][a] = inverse.values()[at];
            }
        }
        return dense;
    }
}
