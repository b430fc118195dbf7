package pippinry.traits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CompatibilityTest {

    private static final AlleleSeries APPLE = AlleleSeries.open("apple");
    private static final AlleleSeries JAPANESE_PEAR = AlleleSeries.closed(
            "Japanese pear",
            List.of(
                    SAllele.ordinary("S2"),
                    SAllele.ordinary("S4"),
                    SAllele.ordinary("S5"),
                    new SAllele("S4sm", "", "S4")),
            Map.of());
    private static final AlleleSeries SALICINA = AlleleSeries.closed(
            "Prunus salicina",
            List.of(SAllele.ordinary("Sb"), SAllele.ordinary("Sc"), new SAllele("Se", "", "Se")),
            Map.of());
    private static final AlleleSeries COUNTED = AlleleSeries.closed(
            "counted",
            List.of(SAllele.ordinary("S1"), SAllele.ordinary("S2"), SAllele.ordinary("S3"), SAllele.ordinary("S4")),
            Map.of("S1", 0.1, "S2", 0.2, "S3", 0.3));

    // s-rules.md, "The rule"; half-compatible rows as in Nature Plants 2020, 6:131-142, Table 1 (pummelo P1 to P7).
    @ParameterizedTest
    @CsvSource({
        "S5S6, S1S2, FULL, S1/S5 S1/S6 S2/S5 S2/S6",
        "S5S6, S2S5, HALF, S2/S5 S2/S6",
        "S2S5, S5S6, HALF, S2/S6 S5/S6",
        "S2S7, S1S2, HALF, S1/S2 S1/S7",
        "S1S2, S2S7, HALF, S1/S7 S2/S7",
        "S8S9, S2S8, HALF, S2/S8 S2/S9",
        "S1S3, S3S5, HALF, S1/S5 S3/S5",
        "S2S3, S2S3, NONE, ''",
        "S3S2, S2S3, NONE, ''"
    })
    void followsTheRuleOfOneLocus(String seed, String pollen, Fertility fertility, String offspring) {
        Compatibility cross = cross(APPLE, seed, pollen);
        assertEquals(fertility, cross.fertility());
        assertEquals(offspring, String.join(" ", cross.offspring().keySet()));
        cross.offspring()
                .values()
                .forEach(share -> assertEquals(1.0 / cross.offspring().size(), share, 1e-15));
    }

    @Test
    void reciprocalHalfCompatibleCrossesDiffer() {
        assertEquals(
                Map.of("S1/S3", 0.5, "S2/S3", 0.5),
                cross(APPLE, "S1/S2", "S1/S3").offspring());
        assertEquals(
                Map.of("S1/S2", 0.5, "S2/S3", 0.5),
                cross(APPLE, "S1/S3", "S1/S2").offspring());
    }

    @Test
    void namesOfDifferentSeriesAreNeverCompared() {
        Compatibility cross = Compatibility.of(
                SGenotype.parse("S2/S4", JAPANESE_PEAR), SGenotype.parse("S2/S4", AlleleSeries.open("European pear")));
        assertEquals(Fertility.UNKNOWN, cross.fertility());
        assertTrue(cross.notes().get(0).contains("different series"));
    }

    @Test
    void triploidStyleShowsAllThreeAlleles() {
        // s-rules.md: Jonagold S2S3S9 rejects all pollen of Golden Delicious (S2S3) and of Jonathan (S7S9) its S9 half.
        assertEquals(Fertility.NONE, cross(APPLE, "S2S3S9", "S2S3").fertility());
        Compatibility jonathan = cross(APPLE, "S2S3S9", "S7S9");
        assertEquals(Fertility.HALF, jonathan.fertility());
        assertTrue(jonathan.offspring().isEmpty(), "no ratio is promised");
        assertTrue(jonathan.notes().stream().anyMatch(note -> note.contains("seed parent is triploid")));
    }

    @Test
    void triploidPollenIsWarnedOf() {
        Compatibility cross = cross(APPLE, "S5S9", "S2S3S9");
        assertEquals(2.0 / 3, cross.pollenShare(), 1e-15);
        assertTrue(cross.notes().stream().anyMatch(note -> note.contains("pollen parent is triploid")));
        assertTrue(cross.offspring().isEmpty());
    }

    @Test
    void styleThatLostItsFunctionLetsItsOwnPollenThrough() {
        // s-rules.md, Osa-Nijisseiki S2S4sm: S4 pollen grows in its style; as pollen parent its S4 is normal.
        Compatibility self = cross(JAPANESE_PEAR, "S2/S4sm", "S2/S4sm");
        assertEquals(Fertility.HALF, self.fertility());
        assertEquals(Map.of("S2/S4sm", 0.5, "S4sm/S4sm", 0.5), self.offspring());
        assertEquals(Fertility.HALF, cross(JAPANESE_PEAR, "S2/S4sm", "S2/S4").fertility());
        assertEquals(Fertility.NONE, cross(JAPANESE_PEAR, "S2/S4", "S2/S4sm").fertility());
    }

    @Test
    void selfCompatibleHaplotypePassesItsOwnStyle() {
        // s-rules.md: Se marks self-compatibility in Japanese plum (Halasz et al. 2007).
        Compatibility self = cross(SALICINA, "ScSe", "ScSe");
        assertEquals(Fertility.HALF, self.fertility());
        assertEquals(Map.of("Sc/Se", 0.5, "Se/Se", 0.5), self.offspring());
        assertEquals(Fertility.NONE, cross(SALICINA, "SbSc", "SbSc").fertility());
    }

    @Test
    void hexaploidsAreNotJudged() {
        assertEquals(Fertility.UNKNOWN, cross(APPLE, "S1S2S3S4S5S6", "S7S8").fertility());
    }

    @Test
    void unknownAlleleLeavesTheCasesOpen() {
        Compatibility cross = cross(APPLE, "S5/S?", "S2/S5");
        assertEquals(Fertility.UNKNOWN, cross.fertility());
        assertEquals(Set.of(Fertility.HALF, Fertility.NONE), cross.possible());
        assertTrue(Double.isNaN(cross.probability(Fertility.NONE)));
        assertEquals(
                Set.of(Fertility.FULL, Fertility.HALF),
                cross(APPLE, "S5/S?", "S2/S3").possible());
        assertEquals(
                Set.of(Fertility.FULL, Fertility.HALF, Fertility.NONE),
                cross(APPLE, "?", "S2/S3").possible());
    }

    @Test
    void howCommonAllelesAreWeighsTheCases() {
        // The other allele of S4/S? is S1, S2 or S3 with 1/6, 2/6, 3/6; the pollen parent is S1/S2.
        Compatibility cross = cross(COUNTED, "S4/S?", "S1/S2");
        assertEquals(0.5, cross.probability(Fertility.FULL), 1e-12);
        assertEquals(0.5, cross.probability(Fertility.HALF), 1e-12);
        assertEquals(0.75, cross.pollenShare(), 1e-12);
        // With S3: four classes of 1/4; with S1: only S2 pollen works; with S2: only S1 pollen.
        assertEquals(0.5 / 4 + (1.0 / 3) / 2, cross.offspring().get("S1/S4"), 1e-12);
        assertEquals(1, cross.offspring().values().stream().mapToDouble(x -> x).sum(), 1e-12);
        assertTrue(cross.offspring().containsKey("S2/S?"));
    }

    @Test
    void namesOutsideTheSeriesAreRefusedWithTheList() {
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> SGenotype.parse("S2/S77", JAPANESE_PEAR));
        assertTrue(refused.getMessage().contains("S77") && refused.getMessage().contains("S2, S4, S4sm, S5"));
        assertThrows(IllegalArgumentException.class, () -> SGenotype.parse("S2", APPLE));
        assertThrows(IllegalArgumentException.class, () -> SGenotype.parse("red/S2", APPLE));
        assertThrows(IllegalArgumentException.class, () -> SGenotype.parse("", APPLE));
    }

    @Test
    void allelesAreOrderedByNumber() {
        assertEquals("S2/S10", SGenotype.parse("S10S2", APPLE).toString());
        assertEquals("S5/S?", SGenotype.parse("S?/S5", APPLE).toString());
        assertEquals(SGenotype.parse("S2S3", APPLE), SGenotype.parse("S3/S2", APPLE));
        assertFalse(SGenotype.parse("S2S3", APPLE).equals(SGenotype.parse("S2S3", AlleleSeries.open("other"))));
    }

    private static Compatibility cross(AlleleSeries series, String seed, String pollen) {
        return Compatibility.of(SGenotype.parse(seed, series), SGenotype.parse(pollen, series));
    }
}
