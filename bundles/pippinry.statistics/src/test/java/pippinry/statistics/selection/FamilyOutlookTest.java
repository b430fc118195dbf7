package pippinry.statistics.selection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class FamilyOutlookTest {

    @Test
    void usefulnessAgreesWithTheWorkedExample() {
        // formulae.md, section 11: mean 60, deviation 6, h = sqrt(0.5), best of 20: 67.9230.
        FamilyOutlook family = new FamilyOutlook(60, 0, 6);
        assertEquals(67.9230, family.bestLookingOf(20, Math.sqrt(0.5)), 5e-5);
        assertEquals(60 + 1.86747505979832 * 6, family.bestOf(20), 1e-9);
    }

    @Test
    void withoutDoubtItIsThePlainNormal() {
        FamilyOutlook family = new FamilyOutlook(10, 0, 2);
        assertEquals(0.5, family.shareAbove(10), 1e-15);
        assertEquals(0.158655253931457, family.shareAbove(12), 1e-12);
        assertEquals(1 - Math.pow(1 - 0.158655253931457, 7), family.chanceOfOneAbove(12, 7), 1e-12);
    }

    @Test
    void doubtOfTheMeanTiesTheMembersTogether() {
        FamilyOutlook sure = new FamilyOutlook(0, 0, Math.hypot(1, 1));
        FamilyOutlook doubtful = new FamilyOutlook(0, 1, 1);
        assertEquals(sure.shareAbove(2), doubtful.shareAbove(2), 1e-12);
        assertTrue(doubtful.chanceOfOneAbove(2, 50) < sure.chanceOfOneAbove(2, 50));
    }

    @Test
    void agreesWithThrowingDice() {
        FamilyOutlook family = new FamilyOutlook(0, 0.5, 1);
        Random dice = new Random(5);
        int hits = 0;
        int rounds = 20_000;
        for (int round = 0; round < rounds; round++) {
            double mean = 0.5 * dice.nextGaussian();
            boolean any = false;
            for (int i = 0; i < 10; i++) {
                any |= mean + dice.nextGaussian() > 2;
            }
            hits += any ? 1 : 0;
        }
        // Three standard errors of 20,000 rounds.
        assertEquals((double) hits / rounds, family.chanceOfOneAbove(2, 10), 0.0095);
        assertThrows(IllegalArgumentException.class, () -> new FamilyOutlook(0, 0, 0));
    }
}
