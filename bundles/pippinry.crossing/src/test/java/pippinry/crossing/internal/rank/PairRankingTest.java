package pippinry.crossing.internal.rank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pippinry.crossing.internal.TestPack;
import pippinry.crossing.internal.TestProgram;
import pippinry.model.Program;
import pippinry.model.ask.Relationship;
import pippinry.model.record.Genotype;
import pippinry.model.value.Code;
import pippinry.traits.Fertility;

class PairRankingTest {

    private static final Wishes WISHES = new Wishes(List.of(), List.of(), 0.95, 1, 50, 100, false, Optional.empty());

    private static TestProgram parents() {
        return new TestProgram()
                .csv(
                        "genotypes",
                        """
                        code,name,crop,kind,ploidy
                        FIE,Fiesta,apple,cultivar,2
                        ELS,Elstar,apple,cultivar,2
                        GOR,GoldRush,apple,cultivar,2
                        TRI,,apple,cultivar,3
                        M9,M.9,apple,rootstock,2
                        13-004-023,,apple,seedling,2
                        13-004-024,,apple,seedling,2
                        """)
                .csv(
                        "alleles",
                        """
                        genotype,locus,alleles,series
                        ELS,S,S3/S5,numbers
                        GOR,S,S1/S5,numbers
                        TRI,S,S2/S3/S9,numbers
                        13-004-023,S,S1/S2,numbers
                        FIE,Rvi6,rvi6/rvi6,
                        13-004-023,Rvi6,Rvi6/rvi6,
                        """)
                .csv("decisions", "genotype,decision,date\n13-004-023,parent,2024-11-01\n13-004-024,discard,2024-11-01")
                .csv("goals", "trait,kind,direction,threshold\nscab_leaf,must,less,2\nstore.weeks,must,more,22");
    }

    @Test
    void pairsThatCannotFertiliseEachOtherAreLeftOutAndCounted() {
        PairRanking ranking = ranking(parents().build(), Optional.empty(), WISHES);
        List<RankedPair> pairs = ranking.best(done -> {});
        assertTrue(pairs.stream().noneMatch(pair -> is(pair, "FIE", "ELS")), "both are S3/S5");
        assertTrue(ranking.notes().stream().anyMatch(note -> note.startsWith("2 pairs cannot fertilise")));
        RankedPair shown = ranking(parents().build(), Optional.empty(), all()).best(done -> {}).stream()
                .filter(pair -> is(pair, "FIE", "ELS"))
                .findFirst()
                .orElseThrow();
        assertEquals(Fertility.NONE, shown.compatibility().fertility());
        assertEquals(0, shown.worth());
    }

    @Test
    void aGlanceHasTheOrderOfTheWholeJudgementAndCanBeCompleted() {
        PairRanking ranking = ranking(parents().build(), Optional.empty(), WISHES);
        List<RankedPair> whole = ranking.best(done -> {});
        List<RankedPair> glance = ranking.glance(done -> {});
        assertEquals(
                whole.stream()
                        .map(pair -> pair.seedParent() + " " + pair.pollenParent())
                        .toList(),
                glance.stream()
                        .map(pair -> pair.seedParent() + " " + pair.pollenParent())
                        .toList());
        assertEquals(whole.get(0), ranking.complete(glance.get(0)));
    }

    @Test
    void rootstocksDiscardedSeedlingsAndSelfingsAreNoParents() {
        List<RankedPair> pairs =
                ranking(parents().build(), Optional.empty(), WISHES).best(done -> {});
        assertTrue(pairs.stream().noneMatch(pair -> pair.seedParent().text().equals("M9")));
        assertTrue(pairs.stream().noneMatch(pair -> pair.pollenParent().text().equals("13-004-024")));
        assertTrue(pairs.stream().anyMatch(pair -> pair.pollenParent().text().equals("13-004-023")));
        assertTrue(pairs.stream().noneMatch(pair -> pair.seedParent().equals(pair.pollenParent())));
    }

    @Test
    void moreWantedSeedlingsRankHigherAndNumbersFollowTheShare() {
        List<RankedPair> pairs =
                ranking(parents().build(), Optional.empty(), WISHES).best(done -> {});
        RankedPair best = pairs.get(0);
        assertTrue(is(best, "GOR", "13-004-023") || is(best, "13-004-023", "GOR"), best.toString());
        assertEquals(0.75, best.share().orElseThrow(), 0.005);
        // One seedling in four lacks the gene: three seedlings leave 1/64 without any.
        assertEquals(3, best.seedlings().orElseThrow());
        Flowers flowers = best.flowers().orElseThrow();
        assertTrue(flowers.low() <= flowers.median() && flowers.median() <= flowers.high());
        assertEquals(1, best.rank());
        RankedPair half = find(pairs, "FIE", "13-004-023");
        assertEquals(0.5, half.share().orElseThrow(), 0.005);
        assertTrue(half.rank() > best.rank());
        assertTrue(half.reasons().stream()
                .anyMatch(reason -> reason.contains("Scab on leaves at most 2: one in 2 of the seedlings")));
    }

    @Test
    void triploidPollenIsWarnedOfAndRanksLow() {
        List<RankedPair> pairs =
                ranking(parents().build(), Optional.empty(), WISHES).best(done -> {});
        RankedPair triploid = find(pairs, "GOR", "TRI");
        assertTrue(triploid.reasons().stream().anyMatch(reason -> reason.contains("pollen parent is triploid")));
        assertTrue(triploid.factors().get("ploidy") < 0.15);
        assertTrue(triploid.rank() > find(pairs, "GOR", "FIE").rank());
    }

    @Test
    void relatedParentsRankLowerAndWithoutPedigreeItIsSaid() {
        Relationship related = new Relationship() {
            @Override
            public double coancestry(Program program, Code<Genotype> one, Code<Genotype> other) {
                return one.text().equals("GOR") && other.text().equals("13-004-023") ? 0.25 : 0;
            }

            @Override
            public double inbreeding(Program program, Code<Genotype> genotype) {
                return 0;
            }

            @Override
            public List<String> doubts(Program program, Code<Genotype> one, Code<Genotype> other) {
                return List.of();
            }
        };
        List<RankedPair> pairs =
                ranking(parents().build(), Optional.of(related), WISHES).best(done -> {});
        assertTrue(is(pairs.get(0), "13-004-023", "GOR"));
        RankedPair close = find(pairs, "GOR", "13-004-023");
        assertEquals(0.25, close.relationship().orElseThrow());
        assertEquals(0.8, close.factors().get("vigour"), 1e-12);
        PairRanking alone = ranking(parents().build(), Optional.empty(), WISHES);
        assertTrue(alone.best(done -> {}).get(0).relationship().isEmpty());
        assertTrue(alone.notes().stream().anyMatch(note -> note.startsWith("The pedigree module is not there")));
    }

    @Test
    void withoutGoalsFertilityStillRanks() {
        Program program = new TestProgram()
                .csv("genotypes", "code,name,crop,kind\nFIE,Fiesta,apple,cultivar\nGOR,GoldRush,apple,cultivar")
                .build();
        PairRanking ranking = ranking(program, Optional.empty(), WISHES);
        List<RankedPair> pairs = ranking.best(done -> {});
        assertEquals(2, pairs.size());
        assertTrue(pairs.get(0).share().isEmpty() && pairs.get(0).seedlings().isEmpty());
        assertTrue(pairs.get(0).flowers().isPresent(), "for a family of 50");
        assertTrue(ranking.notes().stream().anyMatch(note -> note.startsWith("No goals are set yet")));
    }

    @Test
    void withoutACropPackTheProgramStillRanks() {
        PairRanking ranking = new PairRanking(parents().build(), Optional.empty(), Optional.empty(), WISHES);
        assertFalse(ranking.best(done -> {}).isEmpty());
        assertTrue(ranking.notes().stream().anyMatch(note -> note.startsWith("There is no crop pack for 'apple'")));
        assertTrue(ranking.notes().stream().anyMatch(note -> note.startsWith("Flowers are not reckoned")));
    }

    @Test
    void deadKindsWithoutPollenAreNoParents() {
        Program program = parents()
                .csv(
                        "plants",
                        "tag,genotype,kind,status\nFIEA,FIE,graft,alive\nELSA,ELS,graft,dead\nGORA,GOR,graft,grubbed")
                .csv("pollen", "lot,genotype,vials\nP1,GOR,2\nP2,ELS,0")
                .build();
        List<RankedPair> pairs = ranking(program, Optional.empty(), WISHES).best(done -> {});
        assertEquals(1, pairs.size());
        assertTrue(is(pairs.get(0), "FIE", "GOR"));
    }

    @Test
    void theChanceToBeatACheckGrowsWithGoodParents() {
        StringBuilder scores = new StringBuilder("subject,trait,value,date\n");
        List<String> kinds = List.of("FIE", "ELS", "GOR", "TRI", "13-004-023", "13-004-024", "CHECK", "WORST");
        for (int i = 0; i < kinds.size(); i++) {
            for (int year = 2018; year < 2024; year++) {
                scores.append("%s,like.flavour,%d,%d\n".formatted(kinds.get(i), i % 7 + year % 2, year));
            }
        }
        Program program = parents()
                .csv("genotypes", "code,kind\nCHECK,rootstock\nWORST,rootstock")
                .csv("scores", scores.toString())
                .build();
        Beat beat = new Beat("like.flavour", Code.of("CHECK"), true, 0);
        List<RankedPair> pairs = ranking(
                        program,
                        Optional.empty(),
                        new Wishes(List.of(), List.of(), 0.95, 1, 50, 100, false, Optional.of(beat)))
                .best(done -> {});
        double good = find(pairs, "GOR", "13-004-023").beats().orElseThrow();
        double poor = find(pairs, "GOR", "FIE").beats().orElseThrow();
        assertTrue(good > poor && good < 1 && poor > 0, good + " > " + poor);
        assertTrue(find(pairs, "GOR", "FIE").reasons().stream().anyMatch(reason -> reason.contains("beats CHECK")));
    }

    @Test
    void laterPollenWithoutAStoreCostsWorth() {
        Program program = parents()
                .csv(
                        "scores",
                        """
                        subject,trait,value,date
                        FIE,bbch,65,2023-05-10
                        13-004-023,bbch,65,2023-05-15
                        FIE,bbch,65,2024-05-20
                        13-004-023,bbch,65,2024-05-25
                        """)
                .build();
        List<RankedPair> pairs = ranking(program, Optional.empty(), WISHES).best(done -> {});
        RankedPair later = find(pairs, "FIE", "13-004-023");
        assertEquals(5, later.bloomGapDays().orElseThrow().middle(), 1e-9);
        assertEquals(0.5, later.factors().get("bloom"), 1e-9);
        assertEquals(1, find(pairs, "13-004-023", "FIE").factors().get("bloom"));
        assertTrue(later.reasons().stream().anyMatch(reason -> reason.contains("stored pollen")));
    }

    private static PairRanking ranking(Program program, Optional<Relationship> relationship, Wishes wishes) {
        return new PairRanking(program, Optional.of(TestPack.pack()), relationship, wishes);
    }

    private static Wishes all() {
        return new Wishes(List.of(), List.of(), 0.95, 1, 50, 100, true, Optional.empty());
    }

    private static RankedPair find(List<RankedPair> pairs, String seed, String pollen) {
        return pairs.stream().filter(pair -> is(pair, seed, pollen)).findFirst().orElseThrow();
    }

    private static boolean is(RankedPair pair, String seed, String pollen) {
        return pair.seedParent().text().equals(seed)
                && pair.pollenParent().text().equals(pollen);
    }
}
