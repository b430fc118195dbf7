package pippinry.pedigree.internal.parentage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pippinry.pedigree.internal.Programs.code;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pippinry.model.Edit;
import pippinry.model.Program;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.pedigree.internal.PedigreeRelationship;
import pippinry.pedigree.internal.Programs;
import pippinry.pedigree.internal.SmallPack;
import pippinry.traits.CropPack;

class ProgramParentageTest {
    private static final List<CropPack> APPLE = List.of(new SmallPack());

    /** Rows `genotype,locus,alleles` and, for scores, `subject,trait=value`. */
    private static Program read(Program program, String... rows) {
        Edit.Draft draft = Edit.by("IN", "readings");
        for (String row : rows) {
            String[] cells = row.split(",");
            if (cells.length == 3) {
                draft.put(
                        Kinds.ALLELES,
                        Programs.row(
                                Kinds.ALLELES, Map.of("genotype", cells[0], "locus", cells[1], "alleles", cells[2])));
            } else {
                String[] score = cells[1].split("=");
                draft.put(
                        Kinds.SCORES,
                        Programs.row(Kinds.SCORES, Map.of("subject", cells[0], "trait", score[0], "value", score[1])));
            }
        }
        return Programs.apply(program, draft);
    }

    private static ParentsWeighed weighed(Program program, List<CropPack> packs, String child) {
        Genotype genotype = program.find(Kinds.GENOTYPES, code(child)).orElseThrow();
        return ProgramParentage.of(program, packs).weighed(genotype);
    }

    @Test
    void anImpossibleParentageIsToldWithTheLikeliestCause() {
        Program program = read(Programs.of("X,A,B"), "A,S,S3/S7", "B,S,S1/S3", "X,S,S3/S7");
        ParentsWeighed weighed = weighed(program, APPLE, "X");
        assertFalse(weighed.possible());
        assertEquals(List.of("S-alleles"), weighed.against());
        String words = weighed.words().orElseThrow();
        assertTrue(words.startsWith("By S-alleles X cannot come from A with pollen of B; likeliest: "), words);
    }

    @Test
    void withoutACropPackNamedAllelesAreTakenAsEquallyCommon() {
        Program program = read(Programs.of("X,A,B|C"), "A,S,S1/S2", "B,S,S2/S3", "C,S,S2/S4", "X,S,S1/S3");
        ParentsWeighed weighed = weighed(program, List.of(), "X");
        assertTrue(weighed.pollenParents()[0] > 0.9, weighed.words().orElseThrow());
        assertEquals(Optional.of(code("B")), weighed.chances().get(0).parent());
        assertFalse(weighed.chances().get(1).possible());
    }

    @Test
    void publishedAllelesServeWhereNoneAreOnFileAndASportHasItsOrigins() {
        Program program =
                read(Programs.of("F,,,name=Fuji,crop=apple", "S,,,sport_of=F", "X,A,S"), "A,S,S3/S7", "X,S,S3/S5");
        assertFalse(weighed(program, APPLE, "X").possible());
        assertTrue(weighed(program, List.of(), "X").possible());
    }

    @Test
    void aVisibleMarkThatNeitherParentShowsExcludesThem() {
        Program program = read(Programs.of("X,A,B,crop=apple"), "A,tree.type=2", "B,tree.type=2", "X,tree.type=1");
        assertEquals(List.of("Co"), weighed(program, APPLE, "X").against());
        Program mixed = read(program, "B,tree.type=1");
        assertTrue(weighed(mixed, APPLE, "X").possible());
    }

    @Test
    void allelesThatCannotBeReadAreTold() {
        Program program = read(Programs.of("X,A,B,crop=apple"), "A,S,S99/S1", "X,S,S1/S2");
        List<String> faults = ProgramParentage.of(program, APPLE).faults();
        assertEquals(1, faults.size());
        assertTrue(faults.get(0).startsWith("A: 'S99' is no S-allele of the series apple"), faults.get(0));
    }

    @Test
    void chancesOfThePollenParentsSumToOne() {
        Program program = read(
                Programs.of("X,A,B|C|D,crop=apple"),
                "A,S,S1/S2",
                "B,S,S1/S3",
                "C,Rvi6,Rvi6/?",
                "X,S,S2/S3",
                "X,Rvi6,rvi6/rvi6");
        double sum = weighed(program, APPLE, "X").chances().stream()
                .mapToDouble(chance -> chance.chance())
                .sum();
        assertEquals(1, sum, 1e-12);
        assertEquals(List.of("S-alleles", "Rvi6"), weighed(program, APPLE, "X").markers());
    }

    @Test
    void relationshipFollowsTheCandidateThatFits() {
        Program program = read(Programs.of("X,A,B|C,crop=apple"), "A,S,S1/S2", "B,S,S2/S3", "C,S,S2/S5", "X,S,S1/S3");
        PedigreeRelationship relationship = new PedigreeRelationship(APPLE);
        double withB = relationship.coancestry(program, code("X"), code("B"));
        double withC = relationship.coancestry(program, code("X"), code("C"));
        assertTrue(withB > 0.23 && withC < 0.02, withB + " " + withC);
        assertEquals(0.25, withB + withC, 1e-12);
        List<String> doubts = relationship.doubts(program, code("X"), code("B"));
        assertEquals("The pollen parent of X is one of B, C", doubts.get(0));
        assertTrue(doubts.get(1).startsWith("By S-alleles the pollen parent of X is B ("), doubts.get(1));
    }

    @Test
    void anImpossibleParentWeighsOnAllDescendants() {
        Program program =
                read(Programs.of("X,A,B,crop=apple", "Y,X,C", "Z,D,Y"), "A,S,S3/S7", "B,S,S1/S3", "X,S,S3/S7");
        List<String> doubts = new PedigreeRelationship(APPLE).doubts(program, code("Z"));
        assertEquals(1, doubts.size());
        assertTrue(doubts.get(0).startsWith("By S-alleles X cannot come from A"), doubts.get(0));
    }
}
