package pippinry.crossing.internal.genes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pippinry.crossing.internal.TestPack;
import pippinry.crossing.internal.TestProgram;
import pippinry.model.Program;
import pippinry.model.record.Genotype;
import pippinry.model.record.Kinds;
import pippinry.model.value.Code;

class GeneBookTest {

    private static final String GENOTYPES =
            """
            code,name,crop,kind,ploidy,sport_of
            FIE,Fiesta,apple,cultivar,2,
            GOR,GoldRush,apple,cultivar,2,
            COL,,apple,selection,2,
            COS,,apple,selection,2,
            SOR,,apple,selection,2,
            TWO,,apple,selection,2,
            REP,,apple,selection,2,
            REDF,Red Fiesta,apple,sport,2,FIE
            """;

    @Test
    void threeUnlinkedMustsMultiply() {
        // formulae.md, section 1: columnar (1/2), resistant (1/2), low acid (1/4) on different chromosomes: 1/16.
        Program program = program(
                "COL,Co,Co/co,\nCOL,Rvi6,rvi6/rvi6,\nCOL,Ma,Ma/ma,\nGOR,Co,co/co,\nGOR,Ma,Ma/ma,",
                "columnar,must,less,1\nscab_leaf,must,less,2\nacid,must,less,2.3");
        GeneBook genes = book(program);
        SeedlingShares shares = genes.shares(code("COL"), code("GOR"));
        assertEquals(3, genes.goals().size());
        assertEquals(0.5, shares.of(0), 1e-12);
        assertEquals(0.5, shares.of(1), 1e-12);
        assertEquals(0.25, shares.of(2), 1e-12);
        assertEquals(1.0 / 16, shares.ofAll(0b111), 1e-12);
    }

    @Test
    void twoSourcesOfResistanceAreEitherEnough() {
        Program program =
                program("GOR,Rvi17,rvi17/rvi17,\nTWO,Rvi17,Rvi17/rvi17,\nTWO,Rvi6,rvi6/rvi6,", "scab_leaf,must,less,2");
        assertEquals(0.75, book(program).shares(code("GOR"), code("TWO")).of(0), 1e-12);
    }

    @Test
    void recessiveHelpNeedsTwoCopies() {
        Program program = program("FIE,ACS1,2/2,\nSOR,Md-ACS1,1/2,\nCOL,ACS1,1/1,", "store.weeks,must,more,22");
        GeneBook genes = book(program);
        assertFalse(genes.goals().get(0).decides());
        assertEquals(0.5, genes.shares(code("FIE"), code("SOR")).of(0), 1e-12);
        assertEquals(0, genes.shares(code("FIE"), code("COL")).of(0), 1e-12);
    }

    @Test
    void geneNearTheRejectedSAlleleIsPassedOnByRecombinationOnly() {
        // formulae.md, section 8: 10 cM from S (Haldane r = 0.0906); with the rejected allele 0.0906, with the accepted
        // 0.9094.
        Program program = program(
                "FIE,S,S2/S3,numbers\nSOR,S,S2/S5,numbers\nCOS,S,S1/S9,numbers\nSOR,Rvi5,Rvi5/rvi5,\n"
                        + "FIE,Rvi5,rvi5/rvi5,\nCOS,Rvi5,rvi5/rvi5,",
                "mildew,must,less,2");
        GeneBook genes = book(program);
        assertEquals(0.5, genes.shares(code("COS"), code("SOR")).of(0), 1e-12);
        // The phase is not known, so both hold alike and the expected share is 1/2 again, but the cases lie far apart.
        assertEquals(0.5, genes.shares(code("FIE"), code("SOR")).of(0), 1e-12);
        double[] cases = genes.cases(code("FIE"), code("SOR"), 100).keySet().stream()
                .mapToDouble(shares -> shares.of(0))
                .sorted()
                .toArray();
        assertEquals(0.0906, cases[0], 5e-5);
        assertEquals(0.9094, cases[cases.length - 1], 5e-5);
    }

    @Test
    void whatIsNotKnownOfAParentLeavesCases() {
        Program program = program("COL,Rvi6,Rvi6/?,\nFIE,Rvi6,rvi6/rvi6,", "scab_leaf,must,less,2");
        Map<SeedlingShares, Double> cases = book(program).cases(code("COL"), code("FIE"), 100);
        assertEquals(2, cases.size());
        cases.forEach((shares, chance) -> {
            // Of the kinds with at least one copy, 2pq + p^2 with p = 0.002, those with two are p / (2 - p).
            assertEquals(chance > 0.5 ? 1 - 0.002 / 1.998 : 0.002 / 1.998, chance, 1e-9);
            assertEquals(chance > 0.5 ? 0.5 : 1, shares.of(0), 1e-12);
        });
    }

    @Test
    void publishedAllelesStandInUnderAnyNameAndSportsShareThoseOfTheirClone() {
        GeneBook genes = book(program("", "scab_leaf,must,less,2"));
        assertEquals("S3/S5", genes.sAlleles(code("REDF")).toString());
        assertTrue(genes.dosages(code("GOR")).get("Rvi6").certain());
        assertTrue(genes.dosages(code("GOR")).get("Rvi6").ground().contains("published, looked up: test table"));
        assertFalse(genes.dosages(code("FIE")).get("Rvi6").told());
    }

    @Test
    void anUnknownAlleleNameIsSaidAndCountsAsNotKnown() {
        GeneBook genes = book(program("FIE,Rvi6,Rvi6/red,\nFIE,S,S2/S77,numbers", "scab_leaf,must,less,2"));
        genes.dosages(code("FIE"));
        genes.sAlleles(code("FIE"));
        assertTrue(genes.notes().stream().anyMatch(note -> note.startsWith("FIE: 'red' is no allele of Rvi6")));
        assertTrue(genes.notes().stream().anyMatch(note -> note.startsWith("FIE: 'S77' is no S-allele of the series")));
        assertFalse(genes.sAlleles(code("FIE")).complete());
    }

    @Test
    void goalsWithKnownGenesButNothingOnFileAreNoted() {
        GeneBook genes = book(program("", "mildew,must,less,2"));
        assertTrue(genes.goals().isEmpty());
        assertTrue(genes.notes().get(0).startsWith("Genes are known for mildew (Rvi5)"));
    }

    @Test
    void allelesUnderASynonymAreRead() {
        GeneBook genes = book(program("FIE,Vf,Vf/vf,", "scab_leaf,must,less,2"));
        assertEquals(0.5, genes.dosages(code("FIE")).get("Rvi6").gamete());
    }

    private static GeneBook book(Program program) {
        return new GeneBook(
                program,
                Optional.of(TestPack.pack()),
                MapFunction.HALDANE,
                program.table(Kinds.GENOTYPES).stream().map(Genotype::code).toList());
    }

    private static Program program(String alleles, String goals) {
        return new TestProgram()
                .csv("genotypes", GENOTYPES)
                .csv("alleles", "genotype,locus,alleles,series\n" + alleles)
                .csv("goals", "trait,kind,direction,threshold\n" + goals)
                .build();
    }

    private static Code<Genotype> code(String text) {
        return Code.of(text);
    }
}
