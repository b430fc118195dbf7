package pippinry.traits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class SParentageTest {

    private static final AlleleSeries APPLE = AlleleSeries.open("apple");

    // s-parentage-tests.csv of the genetics reference; source of each row in the file.
    @ParameterizedTest
    @CsvFileSource(resources = "/genetics/s-parentage-tests.csv", numLinesToSkip = 1)
    void agreesWithTestedParentages(
            String name,
            String child,
            String seedName,
            String seed,
            String pollenName,
            String pollen,
            String cross,
            String offspring,
            String verdict) {
        assertEquals(verdict.equals("possible"), SParentage.possible(of(child), of(seed), of(pollen)), name);
        Compatibility judged = Compatibility.of(of(seed), of(pollen));
        assertEquals(
                cross,
                Map.of(
                                Fertility.FULL, "fully compatible",
                                Fertility.HALF, "semi-compatible",
                                Fertility.NONE, "incompatible")
                        .get(judged.fertility()),
                name);
        TreeSet<String> expected = new TreeSet<>();
        if (!offspring.equals("none")) {
            for (String genotype : offspring.split(" ")) {
                expected.add(of(genotype).toString());
            }
        }
        assertEquals(expected, new TreeSet<>(judged.offspring().keySet()), name);
    }

    // s-alleles.csv with pedigrees: the triploid is an unreduced egg of Golden Delicious with S9 pollen of Jonathan.
    @Test
    void aTriploidChildMayHaveAnUnreducedGamete() {
        assertTrue(SParentage.possible(of("S2S3S9"), of("S2S3"), of("S7S9")));
        assertFalse(SParentage.possible(of("S2S3S9"), of("S5S7"), of("S7S9")));
    }

    @Test
    void probabilityIsTheShareAmongTheSeedlings() {
        assertEquals(OptionalDouble.of(0.5), SParentage.probability(of("S3S9"), of("S2S3"), of("S3S9")));
        assertEquals(OptionalDouble.of(0), SParentage.probability(of("S2S3"), of("S2S3"), of("S3S9")));
        assertEquals(OptionalDouble.of(0.25), SParentage.probability(of("S2S9"), of("S2S3"), of("S5S9")));
        assertEquals(OptionalDouble.of(0.5), SParentage.probability(of("S2S?"), of("S2S3"), of("S5S9")));
    }

    @Test
    void aGapInTheParentsIsWeighedByHowCommonAllelesAre() {
        AlleleSeries counted = AlleleSeries.closed(
                "counted",
                List.of(SAllele.ordinary("S1"), SAllele.ordinary("S2"), SAllele.ordinary("S3")),
                Map.of("S1", 0.2, "S2", 0.3));
        SGenotype child = SGenotype.parse("S1/S2", counted);
        SGenotype seed = SGenotype.parse("S1/S3", counted);
        // Pollen S3/S? is S3/S1 (2/5: no grain works) or S3/S2 (3/5: only S2 works, so half the seedlings are S1/S2).
        assertEquals(
                0.5,
                SParentage.probability(child, seed, SGenotype.parse("S3/S?", counted))
                        .orElseThrow(),
                1e-12);
        assertEquals(OptionalDouble.empty(), SParentage.probability(of("S1S2"), of("S1S3"), of("S3S?")));
        assertTrue(SParentage.possible(of("S1S2"), of("S1S3"), of("S3S?")));
        assertFalse(SParentage.possible(of("S1S2"), of("S3S5"), of("S4S?")));
    }

    @Test
    void oneParentAloneMustShareAnAllele() {
        assertTrue(SParentage.possible(of("S1S2"), of("S2S3")));
        assertFalse(SParentage.possible(of("S1S2"), of("S3S5")));
        assertTrue(SParentage.possible(of("S1S2"), of("S3S?")));
        assertTrue(SParentage.possible(of("S1S2"), SGenotype.parse("S3S5", AlleleSeries.open("other"))));
    }

    private static SGenotype of(String text) {
        return SGenotype.parse(text, APPLE);
    }
}
