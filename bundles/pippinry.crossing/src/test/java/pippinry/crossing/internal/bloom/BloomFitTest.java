package pippinry.crossing.internal.bloom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pippinry.crossing.internal.TestProgram;
import pippinry.model.Program;
import pippinry.model.ask.Interval;
import pippinry.model.record.Genotype;
import pippinry.model.value.Code;

class BloomFitTest {

    private static final String HEAD = "subject,trait,value,date\n";

    @Test
    void kindsWatchedInDifferentYearsAreComparedThroughAThird() {
        // MID joins the years: EAR is 6 days before MID in 2020, LAT 5 days after MID in 2021, a late year.
        BloomFit fit =
                fit("EAR,bbch,65,2020-05-10\nMID,bbch,65,2020-05-16\nMID,bbch,65,2021-05-26\nLAT,bbch,65,2021-05-31");
        Interval gap = fit.gapDays(code("EAR"), code("LAT")).orElseThrow();
        assertEquals(11, gap.middle(), 1e-9);
        assertEquals(-11, fit.gapDays(code("LAT"), code("EAR")).orElseThrow().middle(), 1e-9);
    }

    @Test
    void withoutAJoiningKindNoGapIsGiven() {
        BloomFit fit = fit("EAR,bbch,65,2020-05-10\nLAT,bbch,65,2021-05-31");
        assertEquals(Optional.empty(), fit.gapDays(code("EAR"), code("LAT")));
        assertEquals(Optional.empty(), fit.gapDays(code("EAR"), code("NEW")));
    }

    @Test
    void otherStagesAndTreesOfAKindCountToo() {
        BloomFit fit =
                fit("EARA,bbch,61,2020-05-08\nEAR,bbch,65,2020-05-12\nLAT,bbch,61,2020-05-11\nLAT,bbch,65,2020-05-15"
                        + "\nEAR,bbch,65,2021-05-20\nLAT,bbch,65,2021-05-23");
        Interval gap = fit.gapDays(code("EAR"), code("LAT")).orElseThrow();
        assertEquals(3, gap.middle(), 1e-9);
        assertEquals(LocalDate.of(2021, 5, 23), fit.expected(code("LAT"), 2021).orElseThrow());
    }

    @Test
    void unevenYearsWidenTheInterval() {
        BloomFit even = fit(years(0, 0, 0, 0));
        BloomFit uneven = fit(years(2, -2, 3, -3));
        assertEquals(3, even.gapDays(code("EAR"), code("LAT")).orElseThrow().middle(), 1e-9);
        Interval wide = uneven.gapDays(code("EAR"), code("LAT")).orElseThrow();
        assertEquals(3, wide.middle(), 1e-9);
        assertTrue(wide.high() - wide.low() > 6);
    }

    @Test
    void datesThatAreNotDaysAndOtherTraitsStayOut() {
        BloomFit fit = fit(
                "EAR,bbch,65,2020-05\nEAR,scab_leaf,2,2020-05-10\nEAR,bbch,10,2020-04-10\nEAR,bbch,65,about 2020-05-10");
        assertTrue(fit.empty());
        assertFalse(fit.knows(code("EAR")));
    }

    private static String years(int... shifts) {
        StringBuilder rows = new StringBuilder();
        for (int i = 0; i < shifts.length; i++) {
            int year = 2018 + i;
            rows.append("EAR,bbch,65,").append(year).append("-05-12\n");
            rows.append("LAT,bbch,65,")
                    .append(year)
                    .append("-05-")
                    .append(15 + shifts[i])
                    .append('\n');
        }
        return rows.toString();
    }

    private static BloomFit fit(String scores) {
        Program program = new TestProgram()
                .csv("genotypes", "code,name\nEAR,\nMID,\nLAT,\nNEW,")
                .csv("plants", "tag,genotype\nEARA,EAR")
                .csv("scores", HEAD + scores)
                .build();
        return BloomFit.of(program);
    }

    private static Code<Genotype> code(String text) {
        return Code.of(text);
    }
}
