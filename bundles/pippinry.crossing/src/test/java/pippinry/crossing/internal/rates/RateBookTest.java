package pippinry.crossing.internal.rates;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pippinry.crossing.internal.TestPack;
import pippinry.crossing.internal.TestProgram;
import pippinry.model.Program;
import pippinry.model.ask.HouseRate;
import pippinry.model.ask.HouseRates.Step;
import pippinry.model.value.Code;
import pippinry.statistics.proportions.Count;

class RateBookTest {

    private static final Program EMPTY = new TestProgram().build();

    private static final Program COUNTED = new TestProgram()
            .csv("genotypes", "code,name\nFIE,Fiesta\nGOR,GoldRush\nELS,Elstar")
            .csv("plants", "tag,genotype,kind,rootstock\nFIEA,FIE,graft,M.9\nGORB,GOR,graft,M.9\nGORC,GOR,graft,M.27")
            .csv(
                    "crosses",
                    "code,year,seed_parent,pollen_parent\n23-001,2023,FIE,GOR\n24-001,2024,FIE,GOR\n24-002,2024,ELS,GOR")
            .csv(
                    "pollinations",
                    """
                    tag,cross,kind,flowers,set_fruits,harvested_fruits
                    23-001/1,23-001,hand,100,30,20
                    23-001/2,23-001,hand,50,12,10
                    24-001/1,24-001,hand,150,40,30
                    24-002/1,24-002,hand,10,8,
                    24-002/2,24-002,open,400,90,80
                    24-002/3,24-002,hand,20,,
                    """)
            .csv(
                    "seedlots",
                    "code,cross,fruits,seeds_full,sown,emerged,potted\nL23-001,23-001,30,180,170,120,100\nL24-002,24-002,8,96,,,")
            .csv("grafts", "plant,date,result\nFIEA,2023-03-10,taken\nGORB,2023-03-10,failed\nGORC,2024-03-10,taken")
            .build();

    @Test
    void countsGoBySeedParentAndYear() {
        OwnCounts counts = new OwnCounts(COUNTED, 10);
        assertEquals(
                List.of(new Count(30, 150), new Count(30, 150)),
                counts.groups(Step.SET).get("FIE"));
        assertEquals(List.of(new Count(8, 10)), counts.groups(Step.SET).get("ELS"));
        assertEquals(
                List.of(new Count(180, 300)),
                counts.groups(Step.SEEDS_PER_FRUIT).get("FIE"));
        // More seeds than the ovules of the fruits are a slip; they count as all.
        assertEquals(
                List.of(new Count(80, 80)), counts.groups(Step.SEEDS_PER_FRUIT).get("ELS"));
        assertEquals(List.of(new Count(120, 170)), counts.groups(Step.EMERGENCE).get("FIE"));
        assertEquals(List.of(new Count(100, 120)), counts.groups(Step.POTTING).get("FIE"));
        assertEquals(List.of(new Count(1, 2)), counts.groups(Step.TAKE).get("M.9"));
    }

    @Test
    void treesCountInTheFieldWhenTheyHaveStoodTwoYears() {
        Program program = new TestProgram()
                .csv(
                        "genotypes",
                        "code,seed_parent\nFIE,\n23-001-001,FIE\n23-001-005,FIE\n23-001-003,FIE\n23-001-004,FIE")
                .csv(
                        "plants",
                        """
                        tag,genotype,status,ended_on
                        23-001-001A,23-001-001,alive,
                        23-001-005A,23-001-005,dead,1966-07
                        23-001-003A,23-001-003,dead,1969-05
                        23-001-004A,23-001-004,grubbed,1966-11
                        """)
                .csv("blocks", "block\nN")
                .csv(
                        "places",
                        """
                        plant,block,row,place,from
                        23-001-001A,N,1,1,1966-03
                        23-001-005A,N,1,2,1966-03
                        23-001-003A,N,1,3,1966-03
                        23-001-004A,N,1,4,1966-03
                        """)
                .build();
        // The program's clock stands at 1970-01-01.
        assertEquals(
                List.of(new Count(2, 3)),
                new OwnCounts(program, 10).groups(Step.FIELD).get("FIE"));
        HouseRate none = new OwnHouseRates(List.of()).rate(EMPTY, Step.FIELD, Optional.empty());
        assertEquals(1, none.value().middle());
        assertTrue(none.basis().contains("not reckoned with"));
    }

    @Test
    void withoutCountsThePublishedRatesStand() {
        RateBook book = new RateBook(EMPTY, Optional.of(TestPack.pack()));
        assertEquals(0.5667, book.belief(Step.SET, "FIE").orElseThrow().mean(), 0.01);
        assertEquals(
                7.1, 10 * book.belief(Step.SEEDS_PER_FRUIT, "FIE").orElseThrow().mean(), 0.1);
        assertTrue(book.complete());
        assertTrue(book.ground(Step.SET, "FIE").contains("no own counts yet"));
        assertEquals(Optional.empty(), book.belief(Step.POTTING, "FIE"));
    }

    @Test
    void ownCountsOutweighThePublishedRate() {
        RateBook book = new RateBook(COUNTED, Optional.of(TestPack.pack()));
        // 0.2 counted twice over, drawn a little to the published 0.57 since years may differ.
        double fiesta = book.belief(Step.SET, "FIE").orElseThrow().mean();
        assertTrue(fiesta > 0.2 && fiesta < 0.3, "set of FIE " + fiesta);
        assertTrue(book.belief(Step.SET, "ELS").orElseThrow().mean() > 0.35);
        assertTrue(book.ground(Step.SET, "FIE")
                .startsWith("own counts: FIE itself 60 of 300, all 68 of 310; over published"));
        assertEquals(4, book.funnel("FIE").stages().size());
    }

    @Test
    void withoutAPackAndCountsNothingIsClaimed() {
        RateBook book = new RateBook(EMPTY, Optional.empty());
        assertFalse(book.complete());
        assertEquals(Optional.empty(), book.belief(Step.SET, "FIE"));
    }

    @Test
    void othersAreToldTheRateAndWhatItRestsOn() {
        OwnHouseRates rates = new OwnHouseRates(List.of(TestPack.pack()));
        HouseRate seeds = rates.rate(withCrop(), Step.SEEDS_PER_FRUIT, Optional.of(Code.of("FIE")));
        assertTrue(seeds.value().low() < 7.1 && 7.1 < seeds.value().high(), seeds.toString());
        assertTrue(seeds.basis().contains("looked up: test table"));
    }

    private static Program withCrop() {
        return new TestProgram().csv("settings", "key,value\ncrop,apple").build();
    }
}
