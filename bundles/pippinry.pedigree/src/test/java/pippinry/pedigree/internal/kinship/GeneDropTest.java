package pippinry.pedigree.internal.kinship;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Alleles dropped through a small pedigree by chance: nothing in common with the formulas under test but the biology. */
class GeneDropTest {
    private static final int DROPS = 200_000;
    private static final double FIVE_STANDARD_ERRORS = 5 * 0.5 / Math.sqrt(DROPS);

    private final Random random = new Random(20260314);
    private int fresh;

    private int[] founder() {
        return new int[] {fresh++, fresh++};
    }

    private int any(int[] genotype) {
        return genotype[random.nextInt(genotype.length)];
    }

    private int[] child(int[] seed, int[] pollen) {
        return new int[] {any(seed), any(pollen)};
    }

    private int[] triploid(int[] seed, int[] pollen) {
        return new int[] {seed[0], seed[1], any(pollen)};
    }

    @Test
    void aTriploidHasTwoThirdsFromItsSeedParent() {
        NamedPedigree pedigree = NamedPedigree.of("C: A B", "D: A B", "T: 2C D", "X: T A");
        double tWithC = 0;
        double tWithT = 0;
        double xInbred = 0;
        for (int drop = 0; drop < DROPS; drop++) {
            int[] a = founder();
            int[] b = founder();
            int[] c = child(a, b);
            int[] t = triploid(c, child(a, b));
            int[] x = child(t, a);
            if (any(t) == any(c)) tWithC++;
            if (any(t) == any(t)) tWithT++;
            if (x[0] == x[1]) xInbred++;
        }
        assertEquals(tWithC / DROPS, pedigree.coancestry("T", "C"), FIVE_STANDARD_ERRORS);
        assertEquals(tWithT / DROPS, pedigree.coancestry("T", "T"), FIVE_STANDARD_ERRORS);
        assertEquals(xInbred / DROPS, pedigree.inbreeding("X"), FIVE_STANDARD_ERRORS);
    }

    @Test
    void oneOfTwoCandidatesIsDrawnForEachSeedling() {
        NamedPedigree pedigree = NamedPedigree.of("C: A B", "D: A E", "X: C D|F", "Y: D D|F", "Z: X Y");
        double xWithY = 0;
        double xInbred = 0;
        double zInbred = 0;
        for (int drop = 0; drop < DROPS; drop++) {
            int[] a = founder();
            int[] c = child(a, founder());
            int[] d = child(a, founder());
            int[] f = founder();
            int[] x = child(c, random.nextBoolean() ? d : f);
            int[] y = child(d, random.nextBoolean() ? d : f);
            int[] z = child(x, y);
            if (any(x) == any(y)) xWithY++;
            if (x[0] == x[1]) xInbred++;
            if (z[0] == z[1]) zInbred++;
        }
        assertEquals(xWithY / DROPS, pedigree.coancestry("X", "Y"), FIVE_STANDARD_ERRORS);
        assertEquals(xInbred / DROPS, pedigree.inbreeding("X"), FIVE_STANDARD_ERRORS);
        assertEquals(zInbred / DROPS, pedigree.inbreeding("Z"), FIVE_STANDARD_ERRORS);
    }
}
