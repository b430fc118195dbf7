package pippinry.lineage.internal.kin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import pippinry.lineage.internal.Programs;
import pippinry.lineage.internal.kin.Bond.Side;
import pippinry.model.Edit;
import pippinry.model.Program;
import pippinry.model.record.Kinds;

class KinTest {

    @Test
    void childrenOfOneCrossAreAFamily() {
        Kin kin = kin("A,,", "B,,", "21-013-001,A,B,kind=seedling", "21-013-002,A,B,kind=seedling");
        Family family = kin.family("21-013-001").orElseThrow();
        assertEquals("21-013", family.cross().orElseThrow());
        assertEquals("2 seedlings", family.count(family.children().size()));
        assertEquals(List.of(family), kin.familiesOf("B"));
    }

    @Test
    void theSameParentsInAnotherYearAreAnotherFamily() {
        Kin kin = kin("A,,", "B,,", "21-013-001,A,B", "22-004-001,A,B");
        assertEquals(2, kin.familiesOf("A").size());
    }

    @Test
    void aFamilyIsAsDoubtfulAsItsMostDoubtfulChild() {
        Kin kin = kin("A,,", "B,,", "21-013-001,A,B,seed_link=sure", "21-013-002,A,B,seed_link=doubtful");
        Bond seed = kin.familiesOf("A").get(0).bonds().get(0);
        assertEquals(Side.SEED, seed.side());
        assertEquals(Doubt.DOUBTFUL, seed.doubt());
    }

    @Test
    void aSelfedSeedlingHasBothLinesToOneTree() {
        Kin kin = kin("A,,", "21-001-001,A,self");
        assertEquals(
                List.of(new Bond("A", Side.SEED, Doubt.SURE, 1), new Bond("A", Side.POLLEN, Doubt.SURE, 1)),
                kin.parents(kin.genotype("21-001-001").orElseThrow()));
        assertEquals(1, kin.familiesOf("A").size());
    }

    @Test
    void eachCandidateIsOneOfSeveral() {
        Kin kin = kin("A,,", "B,,", "C,,", "21-001-001,A,B|C");
        List<Bond> parents = kin.parents(kin.genotype("21-001-001").orElseThrow());
        assertEquals(new Bond("C", Side.POLLEN, Doubt.ONE_OF_SEVERAL, 0.5), parents.get(2));
    }

    @Test
    void aSportHasALineToItsOriginOnly() {
        Kin kin = kin("A,,", "B,A,,sport_of=A");
        assertEquals(
                List.of(new Bond("A", Side.SPORT, Doubt.SURE, 1)),
                kin.parents(kin.genotype("B").orElseThrow()));
    }

    @Test
    void openPollinationAndUnknownParentsAreNoLines() {
        Kin kin = kin("A,,", "21-001-001,A,op", "X,,unknown");
        assertEquals(1, kin.parents(kin.genotype("21-001-001").orElseThrow()).size());
        assertTrue(kin.parents(kin.genotype("X").orElseThrow()).isEmpty());
        assertFalse(kin.family("X").isPresent());
    }

    @Test
    void parentsOfTheLatestCrossesComeFirst() {
        Program program = Programs.edited(
                Programs.of("A,,", "B,,", "C,,", "D,,"),
                Edit.by("IN", "crosses")
                        .put(Kinds.CROSSES, cross("24-001", "2024", "A", "B"))
                        .put(Kinds.CROSSES, cross("26-001", "2026", "C", "A"))
                        .put(Kinds.CROSSES, cross("25-001", "2025", "D", "op")));
        assertEquals(List.of("C", "A", "D"), ParentsInUse.of(program, 3));
    }

    private static pippinry.model.record.Cross cross(String code, String year, String seed, String pollen) {
        return Programs.row(
                Kinds.CROSSES, Map.of("code", code, "year", year, "seed_parent", seed, "pollen_parent", pollen));
    }

    private static Kin kin(String... rows) {
        return Kin.of(Programs.of(rows));
    }
}
