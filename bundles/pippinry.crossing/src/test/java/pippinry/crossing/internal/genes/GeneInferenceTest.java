package pippinry.crossing.internal.genes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import pippinry.crossing.internal.TestPack;
import pippinry.crossing.internal.TestProgram;
import pippinry.model.Program;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.value.Code;
import pippinry.traits.CropPack;

class GeneInferenceTest {

    private static final CropPack PACK = TestPack.pack();
    private static final String HEAD =
            "code,crop,kind,ploidy,seed_parent,pollen_parent,seed_link,pollen_link,sport_of\n";

    @Test
    void aChildOfACarrierHasTheGeneInOneOfTwo() {
        Program program = program(
                "SUS,apple,cultivar,2,,,,,\nCAR,apple,cultivar,2,,,,,\nKID,apple,seedling,2,SUS,CAR,,,", "", "");
        Dosage child = infer(program, "Rvi6").dosage(Code.of("KID"));
        assertEquals(0.5, child.chance(1), 0.01);
        assertEquals("inferred from relatives and scores", child.ground());
    }

    @Test
    void aCleanLookRaisesItAndSpotsEndIt() {
        String genotypes = "SUS,apple,cultivar,2,,,,,\nCAR,apple,cultivar,2,,,,,\nKID,apple,seedling,2,SUS,CAR,,,\n"
                + "SIS,apple,seedling,2,SUS,CAR,,,";
        Program program = program(genotypes, "", "KID,scab_leaf,1\nSIS,scab_leaf,5\nSUS,scab_leaf,7\nCAR,scab_leaf,1");
        GeneInference inference = infer(program, "Rvi6");
        // Two of four kinds are clean: without the gene a plant is clean with 1/2, with it with 0.95; prior one in two.
        assertEquals(0.95 / (0.95 + 0.5), 1 - inference.dosage(Code.of("KID")).chance(0), 0.01);
        assertEquals(0.05 / (0.05 + 0.5), 1 - inference.dosage(Code.of("SIS")).chance(0), 0.01);
    }

    @Test
    void manyCleanOffspringMakeAParentHomozygous() {
        // 05-segregation/beta-binomial of the checks: after n resistant test-cross seedlings of a dominant carrier the
        // odds of
        // homozygous to heterozygous grow by 2^n; here the prior of the unknown allele is 0.002 and readings can be
        // wrong.
        StringBuilder genotypes = new StringBuilder("SUS,apple,cultivar,2,,,,,\nPAR,apple,selection,2,,,,,\n");
        StringBuilder scores = new StringBuilder();
        for (int i = 0; i < 20; i++) {
            genotypes.append("20-001-%03d,apple,seedling,2,SUS,PAR,,,\n".formatted(200 + i));
            scores.append("20-001-%03d,columnar,1\n".formatted(200 + i));
        }
        Program program = program(genotypes.toString(), "PAR,Co,Co/?,\nSUS,Co,co/co,", scores.toString());
        Dosage parent = infer(program, "Co").dosage(Code.of("PAR"));
        assertTrue(parent.chance(2) > 0.95, "homozygous " + parent.chance(2));
        Program few = program(
                "SUS,apple,cultivar,2,,,,,\nPAR,apple,selection,2,,,,,\nK1K,apple,seedling,2,SUS,PAR,,,",
                "PAR,Co,Co/?,\nSUS,Co,co/co,",
                "K1K,columnar,1");
        assertTrue(infer(few, "Co").dosage(Code.of("PAR")).chance(2) < 0.02);
    }

    @Test
    void redOverGreenWithOneUncertainParentGivesAProbability() {
        // Acid (dominant, frequency 1/2): a parent that shows it is Ma/Ma to Ma/ma as 1:2, so a cross with ma/ma gives
        // 2/3.
        Program program = program(
                "SOU,apple,cultivar,2,,,,,\nLOW,apple,cultivar,2,,,,,\nKID,apple,seedling,2,SOU,LOW,,,",
                "LOW,Ma,ma/ma,",
                "SOU,acid,8");
        Dosage sour = infer(program, "Ma").dosage(Code.of("SOU"));
        assertEquals(2.0 / 3, sour.chance(1), 0.03);
        assertEquals(1.0 / 3, sour.chance(2), 0.03);
        assertEquals(2.0 / 3, 1 - infer(program, "Ma").dosage(Code.of("KID")).chance(0), 0.03);
    }

    @Test
    void doubtfulLinksSayLess() {
        String parents = "SUS,apple,cultivar,2,,,,,\nCAR,apple,cultivar,2,,,,,\n";
        Program sure = program(parents + "KID,apple,seedling,2,SUS,CAR,sure,sure,", "", "");
        Program doubtful = program(parents + "KID,apple,seedling,2,SUS,CAR,sure,doubtful,", "", "");
        Program open = program(parents + "KID,apple,seedling,2,SUS,op,sure,,", "", "");
        double one = 1 - infer(sure, "Rvi6").dosage(Code.of("KID")).chance(0);
        double two = 1 - infer(doubtful, "Rvi6").dosage(Code.of("KID")).chance(0);
        double three = 1 - infer(open, "Rvi6").dosage(Code.of("KID")).chance(0);
        assertEquals(0.495, one, 0.01);
        assertEquals(0.3, two, 0.01);
        assertEquals(0.002, three, 0.002);
    }

    @Test
    void candidatesShareTheChance() {
        Program program = program(
                "SUS,apple,cultivar,2,,,,,\nCAR,apple,cultivar,2,,,,,\nKID,apple,seedling,2,SUS,SUS|CAR,,,", "", "");
        assertEquals(0.25, 1 - infer(program, "Rvi6").dosage(Code.of("KID")).chance(0), 0.01);
    }

    @Test
    void certainAllelesStayAsTheyAreWhateverIsSeen() {
        Program program = program("CAR,apple,cultivar,2,,,,,", "", "CAR,scab_leaf,9");
        assertTrue(infer(program, "Rvi6").dosage(Code.of("CAR")).certain());
    }

    @Test
    void originOfTheCopyIsKnownWhereOnlyOneParentHasIt() {
        Program program = program(
                "SUS,apple,cultivar,2,,,,,\nCAR,apple,cultivar,2,,,,,\nKID,apple,seedling,2,SUS,CAR,,,", "", "");
        assertTrue(infer(program, "Rvi6").fromSeedParent(Code.of("KID")) < 0.02);
    }

    @Test
    void triploidParentsAndSportsAreHandled() {
        Program program = program(
                "TRI,apple,cultivar,3,,,,,\nSUS,apple,cultivar,2,,,,,\nKID,apple,seedling,2,SUS,TRI,,,\nSPORT,apple,sport,2,,,,,KID",
                "TRI,Rvi6,Rvi6/rvi6/rvi6,",
                "");
        GeneInference inference = infer(program, "Rvi6");
        assertEquals(1.0 / 3, 1 - inference.dosage(Code.of("KID")).chance(0), 0.01);
        assertEquals(1.0 / 3, 1 - inference.dosage(Code.of("SPORT")).chance(0), 0.01);
        assertFalse(inference.dosage(Code.of("SUS")).chance(0) < 0.99);
    }

    private static GeneInference infer(Program program, String locus) {
        Set<Code<Genotype>> all = new HashSet<>();
        program.table(Kinds.GENOTYPES).forEach(row -> all.add(row.value().code()));
        return new GeneInference(
                program,
                new AlleleFile(program, Optional.of(PACK)),
                PACK,
                PACK.locus(locus).orElseThrow(),
                all);
    }

    /** CAR carries Rvi6 in one copy, SUS in none. */
    private static Program program(String genotypes, String alleles, String scores) {
        boolean carrier = genotypes.contains("CAR,");
        boolean susceptible = genotypes.contains("SUS,");
        return new TestProgram()
                .csv("genotypes", HEAD + genotypes)
                .csv(
                        "alleles",
                        "genotype,locus,alleles,series\n" + (carrier ? "CAR,Rvi6,Rvi6/rvi6,\n" : "")
                                + (susceptible ? "SUS,Rvi6,rvi6/rvi6,\n" : "") + alleles)
                .csv("scores", "subject,trait,value\n" + scores)
                .build();
    }
}
