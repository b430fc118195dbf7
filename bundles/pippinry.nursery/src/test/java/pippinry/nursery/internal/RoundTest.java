package pippinry.nursery.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import pippinry.model.Program;
import pippinry.model.record.PollinationKind;
import pippinry.nursery.internal.round.Controls;
import pippinry.nursery.internal.round.LossesByCause;
import pippinry.nursery.internal.round.Pace;
import pippinry.nursery.internal.round.RoundChecks;
import pippinry.nursery.internal.round.WorkableHours;

class RoundTest {

    private static final String ROUND =
            """
            genotypes: code
            FIE
            TOP
            plants: tag,genotype
            FIE-1,FIE
            crosses: code,seed_parent,pollen_parent
            25-001,FIE,TOP
            pollinations: tag,cross,plant,kind,flowers,set_fruits
            25-001/1,25-001,FIE-1,hand,20,
            25-001/2,25-001,FIE-1,hand,20,
            25-001/4,25-001,FIE-1,hand,20,8
            25-001/5,25-001,FIE-1,control_no_pollen,30,1
            25-001/6,25-001,FIE-1,control_no_pollen,10,
            25-001/7,25-001,FIE-1,control_open,20,10
            """;

    @Test
    void whichBranchesGotOnlyOnePass() {
        Program program = Records.of(
                ROUND
                        + """
                visits: pollination,time,did,count,hand
                25-001/1,2025-05-20T10:00,pollinated,20,IN
                25-001/1,2025-05-20T15:00,pollinated,20,IN
                25-001/2,2025-05-20T10:00,pollinated,20,IN
                25-001/2,2025-05-22T10:00,pollinated,20,IN
                """);
        assertEquals(
                List.of("25-001/1"),
                RoundChecks.onePass(program, 2025).stream()
                        .map(branch -> branch.tag().tag().text())
                        .toList());
    }

    @Test
    void whichBranchesWereNotSeenSincePetalFall() {
        Program program = Records.of(
                ROUND
                        + """
                visits: pollination,time,did,count
                25-001/1,2025-05-20,pollinated,20
                25-001/2,2025-05-20,pollinated,20
                25-001/2,2025-06-05,bag_off,
                25-001/4,2025-05-20,pollinated,20
                """);
        LocalDate july = LocalDate.parse("2025-07-01");
        assertEquals(
                List.of("25-001/1"),
                RoundChecks.notSeenSincePetalFall(program, 2025, july, 17).stream()
                        .map(branch -> branch.tag().tag().text())
                        .toList());
        assertEquals(List.of(), RoundChecks.notSeenSincePetalFall(program, 2025, LocalDate.parse("2025-05-25"), 17));
    }

    @Test
    void aBagWithoutPollenTellsWhetherTheTreeFertilisesItself() {
        List<Controls.Control> controls = Controls.of(Records.of(ROUND));
        Controls.Control bagged = controls.stream()
                .filter(control -> control.kind() == PollinationKind.CONTROL_NO_POLLEN)
                .findFirst()
                .orElseThrow();
        // The branch that nobody counted says nothing.
        assertEquals(1, bagged.branches());
        assertEquals(1.0 / 30, bagged.share(), 1e-12);
        assertTrue(bagged.limits().holds(1.0 / 30) && bagged.limits().high() < 0.2, bagged.toString());
        assertEquals("FIE", bagged.tree());
    }

    @Test
    void paceIsFlowersOverTheTimeBetweenBranches() {
        Program program = Records.of(
                ROUND
                        + """
                visits: pollination,time,did,count,hand
                25-001/1,2025-05-20T10:00,pollinated,20,IN
                25-001/2,2025-05-20T10:30,pollinated,20,IN
                25-001/4,2025-05-20T11:00,pollinated,20,IN
                25-001/1,2025-05-21T10:00,pollinated,20,OD
                25-001/2,2025-05-21T10:30,pollinated,20,OD
                """);
        // Three branches in an hour and a half: two gaps of half an hour and one more for the last branch.
        assertEquals(List.of(new Pace("IN", 40, 1)), Pace.of(program));
    }

    @Test
    void onlyDryWarmHoursOfTheDayAreWorkable() {
        StringBuilder records = new StringBuilder("weather: time,temp_c,wet_min,rain_mm\n");
        for (int hour = 0; hour < 24; hour++) {
            String at = hour < 10 ? "9" : "14";
            String rain = hour == 12 ? "1.2" : "0";
            String wet = hour == 13 ? "45" : "0";
            records.append("2024-05-20T%02d:00,%s,%s,%s%n".formatted(hour, at, wet, rain));
        }
        WorkableHours hours = WorkableHours.of(Records.of(records.toString()));
        // 10 to 18 o'clock are warm enough: nine hours, less one with rain and one that is wet.
        assertEquals(7, hours.around(LocalDate.parse("2026-05-22"), 3).getAsDouble());
        assertTrue(hours.around(LocalDate.parse("2026-07-22"), 3).isEmpty());
    }

    @Test
    void lossesAreSummedByCauseWorstFirst() {
        Program program = Records.of(
                ROUND
                        + """
                seedlots: code
                L1
                losses: subject,number,cause
                25-001/1,2,wind
                L1,5,mould
                25-001/2,4,wind
                FIE-1,,vole
                25-001/2,1,
                """);
        List<LossesByCause.Cause> causes = LossesByCause.of(program);
        assertEquals(
                List.of("wind", "mould", "not written down", "vole"),
                causes.stream().map(LossesByCause.Cause::cause).toList());
        assertEquals(6, causes.get(0).branches());
        assertEquals(5, causes.get(1).lots());
        assertEquals(1, causes.get(3).others());
    }
}
