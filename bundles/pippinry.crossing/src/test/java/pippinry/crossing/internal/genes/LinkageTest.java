package pippinry.crossing.internal.genes;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pippinry.statistics.proportions.KnownShare;
import pippinry.statistics.proportions.TrialsNeeded;

class LinkageTest {

    // formulae.md of the genetics reference, section 4 (Haldane 1919; Kosambi 1944), recomputed there.
    @ParameterizedTest
    @CsvSource({
        "1, 0.00990, 0.01000",
        "5, 0.04758, 0.04983",
        "10, 0.09063, 0.09869",
        "15, 0.12959, 0.14566",
        "20, 0.16484, 0.18997",
        "30, 0.22559, 0.26852",
        "50, 0.31606, 0.38080",
        "100, 0.43233, 0.48201"
    })
    void mapFunctionsAgreeWithTheTable(double distance, double haldane, double kosambi) {
        assertEquals(haldane, MapFunction.HALDANE.recombination(distance), 5e-6);
        assertEquals(kosambi, MapFunction.KOSAMBI.recombination(distance), 5e-6);
    }

    @ParameterizedTest
    @CsvSource({"0.10, 11.157, 10.137", "0.20, 25.541, 21.182"})
    void andBack(double recombination, double haldane, double kosambi) {
        assertEquals(haldane, MapFunction.HALDANE.distance(recombination), 5e-4);
        assertEquals(kosambi, MapFunction.KOSAMBI.distance(recombination), 5e-4);
    }

    // formulae.md, section 5: gametes with both wanted alleles, (1 - r)/2 in coupling and r/2 in repulsion.
    @ParameterizedTest
    @CsvSource({
        "1, HALDANE, 0.004950, 604",
        "1, KOSAMBI, 0.004999, 598",
        "10, HALDANE, 0.045317, 65",
        "10, KOSAMBI, 0.049344, 60",
        "15, HALDANE, 0.064795, 45",
        "15, KOSAMBI, 0.072828, 40"
    })
    void repulsionGivesFewWithBoth(double distance, MapFunction function, double share, long seedlings) {
        double both = twoLoci(function.recombination(distance)).gametes(0b01, 0b10)[0b11];
        assertEquals(share, both, 5e-7);
        assertEquals(
                seedlings, TrialsNeeded.atLeast(1, new KnownShare(both), 0.95).orElseThrow());
    }

    @Test
    void couplingGivesManyWithBoth() {
        double both = twoLoci(MapFunction.HALDANE.recombination(10)).gametes(0b11, 0b00)[0b11];
        assertEquals(0.454683, both, 5e-7);
        assertEquals(5, TrialsNeeded.atLeast(1, new KnownShare(both), 0.95).orElseThrow());
    }

    @Test
    void threeLociMultiplyOverIndependentIntervals() {
        LinkageGroup group = new LinkageGroup(List.of("a", "b", "c"), new double[] {0.1, 0.2});
        double[] gametes = group.gametes(0b111, 0b000);
        assertEquals(0.9 * 0.8 / 2, gametes[0b111], 1e-15);
        assertEquals(0.1 * 0.8 / 2, gametes[0b110], 1e-15);
        assertEquals(0.1 * 0.2 / 2, gametes[0b101], 1e-15);
        assertEquals(0.9 * 0.2 / 2, gametes[0b011], 1e-15);
        double sum = 0;
        for (double share : gametes) {
            sum += share;
        }
        assertEquals(1, sum, 1e-15);
    }

    @Test
    void unknownPhaseCountsBothWaysAlike() {
        LinkageGroup group = twoLoci(0.1);
        Dosage one = new Dosage(new double[] {0, 1, 0}, "test", true);
        ParentGenes parent = ParentGenes.of(group, Map.of("a", one, "b", one), Map.of());
        assertEquals(2, parent.pairs().size());
        assertEquals(0.25, parent.gametes()[0b11], 1e-15);
    }

    @Test
    void whereTheCopiesCameFromTellsThePhase() {
        LinkageGroup group = twoLoci(0.1);
        Dosage one = new Dosage(new double[] {0, 1, 0}, "test", true);
        ParentGenes repulsion = ParentGenes.of(group, Map.of("a", one, "b", one), Map.of("a", 1.0, "b", 0.0));
        assertEquals(0.05, repulsion.gametes()[0b11], 1e-15);
        ParentGenes coupling = ParentGenes.of(group, Map.of("a", one, "b", one), Map.of("a", 1.0, "b", 1.0));
        assertEquals(0.45, coupling.gametes()[0b11], 1e-15);
    }

    @Test
    void triploidGametesCarryOneAlleleOfThree() {
        Dosage two = new Dosage(new double[] {0, 0, 1, 0}, "test", true);
        ParentGenes parent = ParentGenes.of(LinkageGroup.alone("a"), Map.of("a", two), Map.of());
        assertArrayEquals(new double[] {1.0 / 3, 2.0 / 3}, parent.gametes(), 1e-15);
    }

    @Test
    void nonsenseDistancesAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> MapFunction.HALDANE.recombination(-1));
        assertThrows(IllegalArgumentException.class, () -> MapFunction.KOSAMBI.distance(0.5));
        assertThrows(IllegalArgumentException.class, () -> twoLoci(0.6));
    }

    private static LinkageGroup twoLoci(double r) {
        return new LinkageGroup(List.of("a", "b"), new double[] {r});
    }
}
