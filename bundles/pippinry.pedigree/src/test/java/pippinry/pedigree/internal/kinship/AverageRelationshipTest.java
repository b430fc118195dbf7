package pippinry.pedigree.internal.kinship;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AverageRelationshipTest {
    @Test
    void aSeedlingOfTwoCandidatesIsHalfwayBetweenTheCases() {
        NamedPedigree either = NamedPedigree.of("P: A B", "Q: A C", "X: P Q|R");
        double ifQ = NamedPedigree.of("P: A B", "Q: A C", "X: P Q").inbreeding("X");
        double ifR = NamedPedigree.of("P: A B", "Q: A C", "X: P R").inbreeding("X");
        assertEquals((ifQ + ifR) / 2, either.inbreeding("X"), 1e-15);
        assertEquals(0.0625, either.inbreeding("X"), 1e-15);
        assertEquals((0.25 + 0) / 2, either.coancestry("X", "R"), 1e-15);
    }

    @Test
    void sibsOfTheSameCandidatesDrawTheirParentEachAnew() {
        NamedPedigree pedigree = NamedPedigree.of("X: M A|B", "Y: N A|B");
        assertEquals(0.25 * (0.5 * 0.5), pedigree.coancestry("X", "Y"), 1e-15);
    }

    @Test
    void candidatesThatAreSportsOfOneTreeAreOneParent() {
        NamedPedigree pedigree = NamedPedigree.of("S: sport A", "X: M A|S");
        assertEquals(0.25, pedigree.coancestry("X", "A"), 1e-15);
    }

    @Test
    void anOpenPollenParentIsOneOfThoseNamedAsParentsOfEarlierGenerations() {
        NamedPedigree pedigree = NamedPedigree.of("C: A B", "D: E A", "X: A op", "Y: C X", "Z: D op");
        assertEquals(0.25, pedigree.coancestry("X", "A"), 1e-15);
        assertEquals(0.5 * (0.5 * 0.5), pedigree.coancestry("X", "B"), 1e-15);
        assertEquals(0.5 * (0.5 * 0.5), pedigree.coancestry("X", "E"), 1e-15);
        assertEquals(0, pedigree.inbreeding("X"), 1e-15);
        double withThePollen = (0.25 + 0 + 0.25 + 0.125 + pedigree.coancestry("D", "X")) / 5;
        assertEquals(withThePollen, pedigree.inbreeding("Z"), 1e-15);
    }

    @Test
    void aTreeIsNotItsOwnOpenPollenParent() {
        NamedPedigree pedigree = NamedPedigree.of("X: A op", "Y: A op", "Z: A B");
        assertEquals(0, pedigree.inbreeding("X"), 1e-15);
        assertEquals(0.5 * 0.5, pedigree.coancestry("X", "B"), 1e-15);
        assertEquals(0, NamedPedigree.of("X: A op").inbreeding("X"));
    }

    @Test
    void thePollenGroupMayBeToldOf() {
        NamedPedigree pedigree = NamedPedigree.of("X: A op", "C: P Q");
        pedigree.draft.pollenGroup(pedigree.numbers("P", "Q", "R", "Z"));
        assertEquals(0.5 * 0.5 / 4, pedigree.coancestry("X", "R"), 1e-15);
        assertEquals(0.25, pedigree.coancestry("X", "A"), 1e-15);
    }

    /** The walk, the pools and the indirect method against the definition, element by element. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void tangledPedigreesAgreeWithTheTabularMethod(long seed) {
        NamedPedigree pedigree = tangled(new Random(seed), 60, 10);
        Kinship kinship = pedigree.kinship();
        double[][] expected = TabularMethod.coancestry(kinship.graph());
        Kinship.Pairs pairs = kinship.pairs();
        int[] everybody = new int[kinship.graph().individuals()];
        double mean = 0;
        for (int a = 0; a < everybody.length; a++) {
            everybody[a] = a;
            for (int b = 0; b < everybody.length; b++) {
                double f = expected[kinship.graph().node(a)][kinship.graph().node(b)];
                assertEquals(f, pairs.coancestry(a, b), 1e-14, a + " " + b);
                mean += f / everybody.length / everybody.length;
            }
        }
        assertEquals(mean, kinship.meanCoancestry(everybody), 1e-14);
    }

    /** The last two kinds are tetraploids of two unreduced gametes, and triploids by pollen. */
    static NamedPedigree tangled(Random random, int size, int kinds) {
        String[] rows = new String[size];
        for (int i = 0; i < size; i++) rows[i] = "I" + i + ": " + parents(random, i, kinds);
        return NamedPedigree.of(rows);
    }

    private static String parents(Random random, int i, int kinds) {
        if (i < 5) return "unknown unknown";
        String seed = "I" + random.nextInt(i);
        String pollen = "I" + random.nextInt(i);
        return switch (random.nextInt(kinds)) {
            case 0 -> seed + " op";
            case 1 -> seed + " " + pollen + "|I" + random.nextInt(i) + "|F" + i;
            case 2 -> seed + " " + seed;
            case 3 -> "2" + seed + " " + pollen;
            case 8 -> "2" + seed + " 2" + pollen;
            case 9 -> seed + " 2" + pollen;
            case 4 -> seed + " unknown";
            case 5 -> "sport " + seed;
            default -> seed + " " + pollen;
        };
    }
}
