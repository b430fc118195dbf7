package pippinry.nursery.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.ArgumentMatchers.anyString;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pippinry.model.Program;
import pippinry.model.ask.BloomDates;
import pippinry.model.ask.DueTask;
import pippinry.model.ask.Interval;
import pippinry.model.record.Genotype;
import pippinry.model.value.Code;
import pippinry.traits.Basis;
import pippinry.traits.CropPack;
import pippinry.traits.Provenance;
import pippinry.traits.PublishedRate;

class NurseryTasksTest {

    private static final String PARENTS =
            """
            genotypes: code,name
            FIE,Fiesta
            TOP,Topaz
            M27,M27
            plants: tag,genotype,kind
            FIE-1,FIE,graft
            """;
    private static final String CROSS = PARENTS
            + """
            settings: key,value
            crop,apple
            crosses: code,year,seed_parent,pollen_parent,seedlings_wanted
            26-001,2026,FIE,TOP,100
            """;

    @Test
    void flowersPollinatedOnceAreDueAgainTwoDaysLater() {
        DueTask task = only("second-pass", "2026-05-21", branch("2026-05-20T10:00,pollinated"));
        assertEquals("26-001", task.batch());
        assertEquals(LocalDate.parse("2026-05-22"), task.due());
        assertEquals(LocalDate.parse("2026-05-25"), task.until());
        assertTrue(task.detail().contains("26-001/1 on FIE-1"));
    }

    @Test
    void twoPassesOnTheSameDayAreOne() {
        String visits = branch("2026-05-20T10:00,pollinated", "2026-05-20T16:00,pollinated");
        assertEquals(1, find("second-pass", "2026-05-21", visits).size());
    }

    @Test
    void aSecondPassEndsTheTask() {
        String visits = branch("2026-05-20T10:00,pollinated", "2026-05-22T10:00,pollinated");
        assertEquals(List.of(), find("second-pass", "2026-05-23", visits));
    }

    @Test
    void whenFlowersAreOverNobodyIsSentOut() {
        assertEquals(List.of(), find("second-pass", "2026-06-10", branch("2026-05-20,pollinated")));
    }

    @Test
    void aSecondPassThatWasMissedIsStillShownForAWeek() {
        String visits = branch("2026-05-20,pollinated");
        assertEquals(
                LocalDate.parse("2026-05-25"),
                only("second-pass", "2026-06-01", visits).until());
        assertEquals(List.of(), find("second-pass", "2026-06-02", visits));
    }

    @Test
    void bagsComeOffAtThePetalFallThatWasNoted() {
        String records = branch("2026-05-20,bagged", "2026-05-20,pollinated")
                + """
                scores: subject,trait,value,date
                FIE-1,bbch,69,2026-05-28
                """;
        assertEquals(
                LocalDate.parse("2026-05-28"),
                only("bags-off", "2026-05-25", records).due());
    }

    @Test
    void bagsComeOffTenDaysAfterPollenWhereNoPetalFallIsNoted() {
        String records = branch("2026-05-20,bagged", "2026-05-20,pollinated");
        assertEquals(
                LocalDate.parse("2026-05-30"),
                only("bags-off", "2026-05-25", records).due());
    }

    @Test
    void aBranchWithoutFruitIsNotCountedAgain() {
        String records = branch("2026-05-20,pollinated", "2026-06-05,set,0");
        assertEquals(List.of(), find("june-count", "2026-07-10", records));
    }

    @Test
    void aPickedBranchIsFinished() {
        String records = branch("2026-05-20,pollinated", "2026-09-20,harvest,5");
        assertEquals(List.of(), find("june-count", "2026-09-25", records));
        assertEquals(List.of(), find("pick-cross-fruit", "2026-09-25", records));
    }

    @Test
    void aBranchWithoutAnEndIsAskedForAtTheYearsClose() {
        String records = branch("2026-05-20,pollinated", "2026-07-08,june,4");
        assertEquals("26-001", only("close-cross", "2026-11-20", records).batch());
        assertEquals(
                List.of(),
                find(
                        "close-cross",
                        "2026-11-20",
                        records + "2026-09-20,harvest,4".replaceAll("^", "26-001/1,") + "\n"));
    }

    @Test
    void withoutACropPackColdIsTwoToThreeMonths() {
        String records = CROSS.replace("crop,apple", "crop,quince")
                + """
                seedlots: code,cross,harvested_on,seeds_full
                L1,26-001,2026-10-01,40
                chilling: lot,from,to,how
                L1,2026-11-10,,refrigerator
                """;
        assertEquals(
                LocalDate.parse("2027-01-24"),
                only("sow", "2027-01-20", records).due());
    }

    @Test
    void fruitIsPickedAroundTheRipeDaysOfItsSeedParent() {
        String records = branch("2026-05-20,pollinated")
                + """
                scores: subject,trait,value,date
                FIE-1,time.harvest,270,2024-09-26
                FIE-1,time.harvest,274,2025-10-01
                """;
        DueTask task = only("pick-cross-fruit", "2026-09-18", records);
        assertEquals(LocalDate.ofYearDay(2026, 262), task.due());
        assertEquals(LocalDate.ofYearDay(2026, 286), task.until());
    }

    @ParameterizedTest
    @CsvSource({"-3.1, 1", "-1.4, 0"})
    void onlyAFrostThatHarmsOpenFlowersCallsForACount(String lowest, int tasks) {
        String records = branch("2026-05-20,pollinated") + "events: date,where,kind,lowest_c\n2026-05-22,all,frost,"
                + lowest + "\n";
        assertEquals(tasks, find("frost-check", "2026-05-24", records).size());
    }

    @Test
    void aNeutralTagStandsThereUntilItIsBound() {
        String records = PARENTS + "pollinations: tag,plant,kind\nT-0417,FIE-1,hand\n";
        assertEquals("T-0417", only("bind-tag", "2026-05-24", records).batch());
    }

    @Test
    void aControlNeedsNoCross() {
        String records = PARENTS + "pollinations: tag,plant,kind\nT-0417,FIE-1,control_open\n";
        assertEquals(List.of(), find("bind-tag", "2026-05-24", records));
    }

    @ParameterizedTest
    @CsvSource({
        "make-ready, 2026-02-01",
        "bloom-watch, 2026-05-01",
        "gather-pollen, 2026-05-18",
        "pollinate, 2026-05-17"
    })
    void aPlannedCrossHangsOnTheProgramsOwnBloom(String rule, LocalDate due) {
        NurseryTasks tasks = new NurseryTasks(bloom("2026-05-22", "2026-05-24"), null, List.of());
        assertEquals(due, only(tasks, rule, "2026-04-25", Records.of(CROSS)).due());
    }

    @Test
    void aPollenParentThatFlowersLaterNeedsStoredPollen() {
        NurseryTasks tasks = new NurseryTasks(bloom("2026-05-22", "2026-05-26"), null, List.of());
        DueTask task = only(tasks, "gather-pollen", "2026-05-01", Records.of(CROSS));
        assertTrue(task.detail().startsWith("flowers 4 days after the seed parent"), task.detail());
    }

    @Test
    void withoutBloomDatesWorkIsDatedByTheCalendarAndSaysSo() {
        DueTask task = only("pollinate", "2026-04-20", CROSS);
        assertEquals(LocalDate.parse("2026-04-15"), task.due());
        assertTrue(task.detail().contains("dated by the calendar"));
        assertTrue(new NurseryTasks(null, null, List.of(apple()))
                .missing(Records.of(CROSS)).stream().anyMatch(text -> text.contains("bloom")));
    }

    @Test
    void ownNotesOfFullBloomServeWhereNobodyKnowsBloom() {
        String records = CROSS
                + """
                scores: subject,trait,value,date
                FIE-1,bbch,65,2024-05-20
                FIE-1,bbch,65,2025-05-24
                """;
        // Day 141 of a leap year and day 144 of a common one: on average the 22nd.
        assertEquals(
                LocalDate.parse("2026-05-18"),
                only("pollinate", "2026-05-10", records).due());
    }

    @Test
    void seedlingsThatStoodOverInTheirPotsComeUpAgainInSpring() {
        String records = PARENTS
                + """
                genotypes: code,name
                24-001-001,
                24-001-002,
                plants: tag,genotype,kind,made_on
                24-001-001A,24-001-001,own-root,2025-04-20
                24-001-002A,24-001-002,own-root,2025-04-20
                24-001-002B,24-001-002,graft,2026-03-10
                """;
        DueTask task = only("plant-out", "2026-05-15", records);
        assertEquals(LocalDate.parse("2026-05-21"), task.due());
        assertEquals("24-001-001", task.batch());
        assertEquals(List.of(), find("harden-off", "2026-05-15", records));
    }

    @Test
    void inTheSouthTheCalendarRunsHalfAYearLater() {
        String south = CROSS + "settings: key,value\nlatitude,-36.8\n";
        assertEquals(
                LocalDate.parse("2026-10-15"),
                only("pollinate", "2026-10-20", south).due());
    }

    @Test
    void aCrossThatIsBegunIsNotPlannedAnyMore() {
        assertEquals(List.of(), find("pollinate", "2026-05-20", branch("2026-05-20,pollinated")));
    }

    @Test
    void coldAddsUpOverSpellsUntilTheLotIsSown() {
        String records = CROSS
                + """
                seedlots: code,cross,harvested_on,seeds_full
                L1,26-001,2026-10-01,40
                chilling: lot,from,to,how
                L1,2026-10-10,2026-10-30,refrigerator
                L1,2026-11-10,,refrigerator
                """;
        // 20 days in October and 30 in November make 50 of 70 by the tenth of December.
        DueTask task = only("sow", "2026-12-10", "2026-12-31", records);
        assertEquals(LocalDate.parse("2026-12-30"), task.due());
        assertTrue(task.detail().startsWith("50 of about 70 days"), task.detail());
        assertTrue(task.detail().contains("4 pots"), task.detail());
    }

    @Test
    void aSplitLotBringsItsColdAlong() {
        String records = CROSS
                + """
                seedlots: code,cross,harvested_on,seeds_full
                L1,26-001,2026-10-01,40
                L2,26-001,2026-10-01,10
                chilling: lot,from,to,how
                L1,2026-10-10,2026-10-30,refrigerator
                L2,2026-10-30,,refrigerator
                lotmoves: from,to,date,seeds
                L1,L2,2026-10-30,10
                """;
        DueTask task = only("sow", "2026-11-19", "2026-12-31", records);
        assertEquals("L2", task.batch());
        assertTrue(task.detail().startsWith("40 of about 70 days"), task.detail());
    }

    @Test
    void outdoorsOnlyColdHoursCount() {
        StringBuilder records = new StringBuilder(CROSS)
                .append("seedlots: code,cross,harvested_on,seeds_full\nL1,26-001,2026-10-01,40\n")
                .append("chilling: lot,from,to,how\nL1,2026-12-01,,outdoors in damp sand\nweather: time,temp_c\n");
        // Every other hour of each day is too warm.
        LocalDate.parse("2026-12-01").datesUntil(LocalDate.parse("2026-12-21")).forEach(day -> {
            for (int hour = 0; hour < 24; hour++) {
                records.append("%sT%02d:00,%d%n".formatted(day, hour, hour % 2 == 0 ? 5 : 15));
            }
        });
        DueTask task = only("sow", "2026-12-21", "2027-03-31", records.toString());
        assertTrue(task.detail().startsWith("10 of about 70 days"), task.detail());
    }

    @Test
    void rootsBeforeTimeCallForSowingAtOnce() {
        String records = CROSS
                + """
                seedlots: code,cross,harvested_on,seeds_full
                L1,26-001,2026-10-01,40
                chilling: lot,from,to,how
                L1,2026-11-10,,refrigerator
                scores: subject,trait,value,date
                L1,seed.roots,3,2026-12-05
                """;
        assertEquals(
                LocalDate.parse("2026-12-05"),
                only("sow", "2026-12-06", records).due());
    }

    @Test
    void coldSeedIsLookedAtMonthly() {
        String records = CROSS
                + """
                seedlots: code,cross,harvested_on,seeds_full
                L1,26-001,2026-10-01,40
                chilling: lot,from,to,how
                L1,2026-11-01,,refrigerator
                """;
        assertEquals(
                List.of("2026-12-01", "2026-12-31"),
                find("look-at-cold-seed", "2026-12-05", "2026-12-31", records).stream()
                        .map(task -> task.due().toString())
                        .toList());
    }

    @Test
    void emergenceIsCountedWeeklyFromTheThirdWeek() {
        String sown = CROSS
                + "seedlots: code,cross,harvested_on,seeds_full,sown_on,sown\nL1,26-001,2025-10-01,40,2026-03-01,40\n";
        assertEquals(
                LocalDate.parse("2026-03-22"),
                only("count-emergence", "2026-03-25", sown).due());
        String counted = sown + "emergence: lot,date,emerged\nL1,2026-03-24,5\n";
        assertEquals(
                LocalDate.parse("2026-03-31"),
                only("count-emergence", "2026-03-25", "2026-04-10", counted).due());
    }

    @Test
    void countingEndsWhenTwoLateCountsAreTheSame() {
        String records = CROSS
                + """
                seedlots: code,cross,harvested_on,seeds_full,sown_on,sown
                L1,26-001,2025-10-01,40,2026-03-01,40
                emergence: lot,date,emerged
                L1,2026-04-14,33
                L1,2026-04-21,33
                """;
        assertEquals(List.of(), find("count-emergence", "2026-04-30", records));
    }

    @Test
    void aLotWithoutCrossOrSourceIsAskedFor() {
        String records = CROSS + "seedlots: code,harvested_on,source\nL1,2026-10-01,\nL2,2026-10-01,gift\n";
        assertEquals("L1", only("lot-source", "2026-10-05", records).batch());
    }

    @Test
    void benchGraftsAreReadInTheFirstLeaves() {
        String records = CROSS
                + """
                plants: tag,genotype,kind
                FIE-2,FIE,graft
                FIE-4,FIE,graft
                grafts: plant,date,method,result
                FIE-2,2026-02-20,whip and tongue,
                FIE-4,2026-02-20,whip and tongue,taken
                """;
        DueTask task = only("read-grafts", "2026-05-02", records);
        assertEquals(LocalDate.parse("2026-05-01"), task.due());
        assertTrue(task.detail().startsWith("FIE-2; made 2026-02-20"), task.detail());
        assertTrue(task.caution().isPresent());
    }

    @Test
    void aKeptPlantWithOneLivingTreeNeedsCopies() {
        String records = PARENTS
                + """
                genotypes: code,name
                20-001-001,
                20-001-002,
                plants: tag,genotype,kind,status
                20-001-001A,20-001-001,own-root,alive
                20-001-001B,20-001-001,graft,dead
                20-001-002A,20-001-002,own-root,alive
                20-001-002B,20-001-002,graft,alive
                decisions: genotype,decision,date
                20-001-001,watch,2024-12-01
                20-001-001,keep,2025-12-01
                20-001-002,keep,2025-12-01
                """;
        assertTrue(only("only-copy", "2026-01-15", records).detail().startsWith("only living plant 20-001-001A"));
    }

    @Test
    void aLimbOnADeadHostIsNoLivingCopy() {
        String records = PARENTS
                + """
                genotypes: code,name
                20-001-001,
                plants: tag,genotype,kind,status,host
                HOST,FIE,graft,dead,
                20-001-001A,20-001-001,own-root,alive,
                20-001-001B,20-001-001,limb,alive,HOST
                decisions: genotype,decision,date
                20-001-001,keep,2025-12-01
                """;
        assertEquals(1, find("only-copy", "2026-01-15", records).size());
    }

    @Test
    void seedlingsGoOutAfterTheFrostThatThisLandKnows() {
        String potted = PARENTS
                + """
                crosses: code,year,seed_parent,pollen_parent
                25-001,2025,FIE,TOP
                genotypes: code,name
                25-001-001,
                25-001-002,
                plants: tag,genotype,kind,made_on
                25-001-001A,25-001-001,own-root,2026-04-20
                25-001-002A,25-001-002,own-root,2026-04-20
                events: date,kind,lowest_c
                2023-05-17,frost,-1
                2024-05-02,frost,-1
                2025-04-28,frost,-1
                """;
        assertEquals(
                LocalDate.parse("2026-05-18"),
                only("plant-out", "2026-05-20", potted).due());
        assertEquals(
                LocalDate.parse("2026-05-03"),
                only("harden-off", "2026-05-05", potted).due());
        assertTrue(only("plant-out", "2026-05-20", potted).text().contains("2 seedlings of 25-001"));
    }

    @Test
    void theStoolBedIsStrippedInLateWinterAndMoundedInSummer() {
        String records = PARENTS + "plants: tag,genotype,kind\nM27-1,M27,stool\nM27-2,M27,stool\n";
        assertEquals(3, find("stool-bed", "2026-07-05", records).size());
        assertTrue(only("stool-bed", "2026-02-05", records).text().startsWith("Strip the stools of M27"));
    }

    @Test
    void aRecentLossWithoutACauseIsAskedForAnOldOneIsNot() {
        String records = CROSS
                + "losses: subject,date,number,cause\n26-001,2026-05-01,3,\nFIE-1,2019-05-01,1,\n26-001,2026-05-02,2,wind\n";
        assertEquals("26-001", only("loss-cause", "2026-06-01", records).batch());
    }

    /** Ten weeks of cold, six at least and fourteen at most. */
    private static CropPack apple() {
        Provenance memory = new Provenance(Basis.FROM_MEMORY, "test");
        PublishedRate cold = new PublishedRate(
                "chilling_weeks", "", OptionalDouble.of(6), 10, OptionalDouble.of(14), 1, "weeks", memory, "");
        CropPack pack = mock(CropPack.class);
        when(pack.crop()).thenReturn("apple");
        when(pack.rate(anyString())).thenReturn(Optional.empty());
        when(pack.rate("chilling_weeks")).thenReturn(Optional.of(cold));
        return pack;
    }

    private static String branch(String... visits) {
        StringBuilder records = new StringBuilder(CROSS)
                .append("pollinations: tag,cross,plant,kind\n26-001/1,26-001,FIE-1,hand\n")
                .append("visits: pollination,time,did,count\n");
        for (String visit : visits) {
            String cells = visit.split(",").length == 2 ? visit + "," : visit;
            records.append("26-001/1,").append(cells).append('\n');
        }
        return records.toString();
    }

    private static List<DueTask> find(String rule, String today, String records) {
        return find(rule, today, LocalDate.parse(today).plusDays(14).toString(), records);
    }

    private static List<DueTask> find(String rule, String today, String to, String records) {
        return find(new NurseryTasks(null, null, List.of(apple())), rule, today, to, Records.of(records));
    }

    private static List<DueTask> find(NurseryTasks tasks, String rule, String today, String to, Program program) {
        LocalDate day = LocalDate.parse(today);
        return tasks.tasks(program, day, day, LocalDate.parse(to)).stream()
                .filter(task -> task.rule().equals(rule))
                .toList();
    }

    private static DueTask only(String rule, String today, String records) {
        return only(rule, today, LocalDate.parse(today).plusDays(14).toString(), records);
    }

    private static DueTask only(String rule, String today, String to, String records) {
        List<DueTask> found = find(rule, today, to, records);
        assertEquals(1, found.size(), found.toString());
        return found.get(0);
    }

    private static DueTask only(NurseryTasks tasks, String rule, String today, Program program) {
        List<DueTask> found =
                find(tasks, rule, today, LocalDate.parse(today).plusDays(28).toString(), program);
        assertEquals(1, found.size(), found.toString());
        return found.get(0);
    }

    /** Fiesta and Topaz in full bloom on these days of 2026. */
    private static BloomDates bloom(String fiesta, String topaz) {
        return new BloomDates() {
            @Override
            public Optional<Interval> gapDays(Program program, Code<Genotype> one, Code<Genotype> other) {
                return Optional.empty();
            }

            @Override
            public Optional<LocalDate> expected(Program program, Code<Genotype> genotype, int year) {
                return year == 2026
                        ? Optional.of(LocalDate.parse(genotype.text().equals("FIE") ? fiesta : topaz))
                        : Optional.empty();
            }
        };
    }
}
