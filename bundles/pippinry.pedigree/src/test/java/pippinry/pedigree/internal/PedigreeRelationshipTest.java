package pippinry.pedigree.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static pippinry.pedigree.internal.Programs.code;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import pippinry.model.Program;

class PedigreeRelationshipTest {
    private final PedigreeRelationship relationship = new PedigreeRelationship(List.of());

    private double f(Program program, String a, String b) {
        return relationship.coancestry(program, code(a), code(b));
    }

    private List<String> doubts(Program program, String a, String b) {
        return relationship.doubts(program, code(a), code(b));
    }

    @Test
    void theInbreedingOfACrossIsTheCoancestryOfItsParents() {
        Program program = Programs.of("C,A,B", "D,A,B", "E,C,D");
        assertEquals(0.25, f(program, "C", "D"));
        assertEquals(0.25, relationship.inbreeding(program, code("E")));
    }

    @Test
    void aSportIsItsOriginAndASelfedSeedlingIsHalfInbred() {
        Program program = Programs.of("C,A,B", "S,,,sport_of=C,kind=sport", "X,S,self", "Y,C,");
        assertEquals(0.5, f(program, "S", "C"));
        assertEquals(0.5, relationship.inbreeding(program, code("X")));
        assertEquals(0.25, f(program, "S", "Y"));
    }

    @Test
    void aTriploidHasTwoSetsFromTheSeedParentUnlessThePollenAloneHadFour() {
        Program program = Programs.of("T,A,B,ploidy=3", "Q,,,ploidy=4", "U,A,Q,ploidy=3");
        assertEquals(2.0 / 3 * 0.5, f(program, "T", "A"), 1e-15);
        assertEquals(1.0 / 3 * 0.5, f(program, "T", "B"), 1e-15);
        assertEquals(1.0 / 3 * 0.5, f(program, "U", "A"), 1e-15);
    }

    @Test
    void candidatesAndOpenPollenAreAveragedOver() {
        Program program = Programs.of("X,A,B|C", "Y,A,op");
        assertEquals(0.125, f(program, "X", "B"));
        assertEquals(0.125, f(program, "Y", "B"));
    }

    @Test
    void doubtfulLinksOnTheWayAreToldWithTheirGround() {
        Program program = Programs.of(
                "C,A,B,seed_link=doubtful,link_ground=tag lost",
                "D,A,E,pollen_link=likely",
                "F,C,G,seed_link=likely",
                "H,D,I");
        assertEquals(
                List.of("The seed parent of F, C, is likely", "The seed parent of C, A, is doubtful (tag lost)"),
                doubts(program, "F", "H").stream()
                        .sorted((a, b) -> b.compareTo(a))
                        .toList());
        assertEquals(
                List.of(),
                doubts(program, "D", "E").stream()
                        .filter(d -> d.contains("seed"))
                        .toList());
        assertEquals(List.of("The pollen parent of D, E, is likely"), doubts(program, "D", "E"));
        assertEquals(List.of(), doubts(program, "G", "I"));
    }

    @Test
    void candidatesAndOpenPollenAreDoubtsWhereTheyMakeARelationship() {
        Program program = Programs.of("C,A,B|D", "X,E,op");
        assertEquals(List.of("The pollen parent of C is one of B, D"), doubts(program, "C", "D"));
        assertEquals(List.of(), doubts(program, "C", "A"));
        assertEquals(List.of("The pollen parent of X is open"), doubts(program, "X", "A"));
    }

    @Test
    void theDoubtAboutOnesOwnInbreedingIsInTheLinksThatMakeIt() {
        Program program = Programs.of(
                "C,A,B,pollen_link=doubtful",
                "D,A,E",
                "X,C,D,seed_link=doubtful",
                "Y,X,self,pollen_link=likely",
                "Z,A,C,pollen_link=likely");
        assertEquals(List.of("The seed parent of X, C, is doubtful"), doubts(program, "X", "X"));
        assertEquals(List.of("Y as a selfed seedling is likely"), doubts(program, "Y", "Y"));
        assertEquals(List.of("The pollen parent of Z, C, is likely"), doubts(program, "Z", "Z"));
    }

    @Test
    void aProgramIsReckonedOnce() {
        List<Program> reckoned = new ArrayList<>();
        Snapshots<String> snapshots = new Snapshots<>(program -> {
            reckoned.add(program);
            return "reckoned";
        });
        Program program = Programs.of("C,A,B");
        snapshots.of(program);
        snapshots.of(program);
        assertEquals(List.of(program), reckoned);
    }

    @Test
    void whatIsDoubtfulOfAnAncestorIsInherited() {
        Program program = Programs.of(
                "C,A,B,seed_link=likely", "D,C,E,pollen_link=doubtful", "F,D,G,seed_link=likely", "H,F,I|K");
        assertEquals(
                List.of("The pollen parent of H is one of I, K", "The pollen parent of D, E, is doubtful"),
                relationship.doubts(program, code("H")));
        assertEquals(List.of("The seed parent of C, A, is likely"), relationship.doubts(program, code("C")));
    }

    @Test
    void aParentYoungerThanItsChildIsAskedAbout() {
        Program program = Programs.of("A,,,year=2019", "C,A,B,year=2015", "D,A,B,year=about 2018", "E,C,D,year=2022");
        assertEquals(
                List.of("By the years on file A (2019) is younger than its child C (2015)"),
                relationship.doubts(program, code("C")));
        assertEquals(List.of(), relationship.doubts(program, code("D")));
        assertEquals(1, relationship.doubts(program, code("E")).size());
    }

    @Test
    void aStrangerIsRefusedByName() {
        Program program = Programs.of("C,A,B");
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class, () -> f(program, "C", "ZZ"));
        assertEquals("no genotype ZZ is on file", refused.getMessage());
    }
}
