package pippinry.nursery.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import pippinry.model.Program;
import pippinry.model.record.Kinds;
import pippinry.model.value.Code;
import pippinry.nursery.internal.account.Accounts;
import pippinry.nursery.internal.account.FamilyAccount;
import pippinry.nursery.internal.account.Funnel;
import pippinry.nursery.internal.account.Lossy;
import pippinry.nursery.internal.account.Step;
import pippinry.nursery.internal.copies.Takes;
import pippinry.nursery.internal.seed.LotSeeds;

class AccountsTest {

    private static final String RECORDS =
            """
            genotypes: code
            FIE
            25-001-001
            25-001-002
            25-001-003
            crosses: code,seed_parent
            25-001,FIE
            25-002,FIE
            25-003,FIE
            pollinations: tag,cross,kind,flowers,set_fruits,harvested_fruits
            25-001/1,25-001,hand,20,10,8
            25-001/2,25-001,hand,10,3,2
            25-001/4,25-001,control_open,50,30,20
            25-002/2,25-002,hand,30,15,10
            seedlots: code,cross,seeds_full,sown,emerged,potted
            L1,25-001,70,40,10,8
            L2,25-001,,20,10,0
            L3,25-002,80,80,60,55
            lotmoves: from,to,date,seeds
            L1,L2,2025-10-01,25
            plants: tag,genotype,kind,status
            25-001-001A,25-001-001,own-root,dead
            25-001-001B,25-001-001,graft,alive
            25-001-002A,25-001-002,own-root,dead
            25-001-003A,25-001-003,own-root,alive
            """;

    @Test
    void controlsAreNoPartOfTheCross() {
        FamilyAccount account = account("25-001");
        assertEquals("30", shown(account, Step.FLOWERS));
        assertEquals("10", shown(account, Step.FRUITS));
    }

    @Test
    void seedsOfASplitLotAreCountedOnceAndSownWhereverTheyWere() {
        FamilyAccount account = account("25-001");
        assertEquals("70", shown(account, Step.SEEDS));
        assertEquals("60", shown(account, Step.SOWN));
        Program program = Records.of(RECORDS);
        assertEquals(
                OptionalInt.of(45),
                LotSeeds.of(program, program.find(Kinds.SEEDLOTS, Code.of("L1")).orElseThrow()));
        assertEquals(
                OptionalInt.of(25),
                LotSeeds.of(program, program.find(Kinds.SEEDLOTS, Code.of("L2")).orElseThrow()));
    }

    @Test
    void aSeedlingLivesWhileOneOfItsPlantsLives() {
        assertEquals("2", shown(account("25-001"), Step.LIVING));
    }

    @Test
    void whatNobodyCountedIsNotNone() {
        assertEquals(Optional.empty(), account("25-002").count(Step.LIVING));
        assertEquals(2, Accounts.of(Records.of(RECORDS)).size());
    }

    @Test
    void aStationNotCountedEverywhereIsALeastNumberAndGivesNoShare() {
        String gap = RECORDS.replace("25-001/2,25-001,hand,10,3,2", "25-001/2,25-001,hand,10,,2");
        FamilyAccount account = Accounts.of(Records.of(gap)).get(0);
        assertEquals("≥ 10", shown(account, Step.SET));
        assertTrue(account.share(Step.SET).isEmpty());
    }

    @Test
    void aCrossFellBehindWhereItKeptLeastComparedWithTheOthers() {
        List<FamilyAccount> accounts = Accounts.of(Records.of(RECORDS));
        Lossy lossy = Lossy.of(accounts);
        // 20 of 60 emerged where 80 of 140 did over both.
        assertEquals(80.0 / 140, lossy.usual(Step.EMERGED), 1e-12);
        assertEquals(Optional.of(Step.POTTED), lossy.worst(accounts.get(0)));
        assertEquals(Optional.empty(), lossy.worst(accounts.get(1)));
    }

    @Test
    void onlyCrossesCountedAtEveryStationAreSummed() {
        Lossy lossy = Lossy.of(Accounts.of(Records.of(RECORDS)));
        assertEquals(1, lossy.whole());
        assertEquals(30, lossy.sums().get(Step.FLOWERS));
    }

    @Test
    void theFunnelStaysInsideItsPictureAndShowsEveryStation() {
        Map<Step, Integer> counts = new EnumMap<>(Step.class);
        int count = 12_345;
        for (Step step : Step.values()) {
            counts.put(step, count);
            count /= 3;
        }
        Funnel funnel = new Funnel(counts);
        Ink ink = Ink.of(funnel, 483, (int) Math.round(483 * funnel.aspect(483)));
        assertTrue(ink.inside() > 3000, ink.toString());
        assertEquals(0, ink.outside());
    }

    @Test
    void takesCountOnlyGraftsThatWereRead() {
        Program program = Records.of(
                """
                genotypes: code
                FIE
                plants: tag,genotype,kind,rootstock
                FIE-1,FIE,graft,M27
                FIE-2,FIE,graft,M27
                FIE-4,FIE,graft,M9
                FIE-5,FIE,graft,M9
                grafts: plant,date,method,hand,result
                FIE-1,2025-03-01,bench,IN,taken
                FIE-2,2025-03-01,bench,IN,failed
                FIE-4,2025-04-01,bench,,taken
                FIE-5,2025-04-01,bench,IN,
                """);
        List<Takes.Take> stocks = Takes.of(program, Takes.By.STOCK);
        assertEquals(List.of("M27", "M9"), stocks.stream().map(Takes.Take::sort).toList());
        assertEquals(0.5, stocks.get(0).share());
        assertEquals(1, stocks.get(1).read());
        assertEquals(
                List.of("03 March", "04 April"),
                Takes.of(program, Takes.By.MONTH).stream().map(Takes.Take::sort).toList());
        assertEquals("not written down", Takes.of(program, Takes.By.HAND).get(1).sort());
    }

    private static String shown(FamilyAccount account, Step step) {
        return account.count(step).orElseThrow().toString();
    }

    private static FamilyAccount account(String cross) {
        return Accounts.of(Records.of(RECORDS)).stream()
                .filter(account -> account.cross().code().text().equals(cross))
                .findFirst()
                .orElseThrow();
    }
}
