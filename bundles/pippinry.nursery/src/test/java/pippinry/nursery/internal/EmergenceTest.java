package pippinry.nursery.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pippinry.model.Program;
import pippinry.model.record.Kinds;
import pippinry.model.value.Code;
import pippinry.nursery.internal.emergence.Counting;
import pippinry.nursery.internal.emergence.CurveFit;
import pippinry.nursery.internal.emergence.EmergenceCurve;
import pippinry.nursery.internal.emergence.EmergencePicture;
import pippinry.nursery.internal.emergence.LotEmergence;
import pippinry.nursery.internal.emergence.TimeToHalf;

class EmergenceTest {

    /**
     * Chickweed, the example of Ritz, Pipper & Streibig 2013, European Journal of Agronomy 45:1-6; data set drc/chickweed of
     * Rdatasets. Printed there: b 20.77, share 0.20011, half at 196. Standard errors and log-likelihood by direct maximisation
     * in R 4.2.2.
     */
    @Test
    void theFittedCurveIsThatOfTheChickweedExample() throws IOException {
        EmergenceCurve curve = CurveFit.of(chickweed()).orElseThrow();
        assertEquals(-20.767389977594, curve.steepness(), 20.77e-4);
        assertEquals(0.20010923739573, curve.share(), 0.2e-4);
        assertEquals(196.052993832765, curve.half(), 196e-4);
        assertEquals(2.9442181703431, curve.steepnessError(), 2.94e-3);
        assertEquals(0.0282999721528431, curve.shareError(), 0.0283e-3);
        assertEquals(2.50568472415788, curve.halfError(), 2.506e-3);
        assertEquals(-188.171855949702, curve.logLikelihood(), 1e-6);
    }

    @Test
    void limitsOfTheFinalShareHoldItAndStayAShare() throws IOException {
        var limits = CurveFit.of(chickweed()).orElseThrow().shareLimits();
        assertTrue(limits.low() > 0.14 && limits.low() < 0.2, limits.toString());
        assertTrue(limits.high() > 0.2 && limits.high() < 0.27, limits.toString());
    }

    /**
     * Set A is the worked example at pgomba.github.io/seedTools/articles/coolbear_use.html, which prints 8.6875 for N/2; set C
     * is counted on uneven days; expected values by exact arithmetic in R 4.2.2.
     */
    @ParameterizedTest
    @CsvSource({
        "A, 8.6875, 8.75, 9.16",
        "B, 5.9411764705882355, 5.9705882352941178, 6.7",
        "C, 11.0, 11.166666666666666, 13.733333333333333"
    })
    void timeToHalfIsThatOfThePublishedExamples(String set, double farooq, double coolbear, double mean)
            throws IOException {
        Counting counting = timeIndices(set);
        assertEquals(farooq, TimeToHalf.farooq(counting).getAsDouble(), 1e-10);
        assertEquals(coolbear, TimeToHalf.coolbear(counting).getAsDouble(), 1e-10);
        assertEquals(mean, TimeToHalf.mean(counting).getAsDouble(), 1e-10);
    }

    @Test
    void fewCountsHoldNoCurve() {
        Counting two = new Counting(30, List.of(new Counting.Interval(0, 20, 5), new Counting.Interval(20, 27, 9)));
        assertEquals(Optional.empty(), CurveFit.of(two));
    }

    @Test
    void whereAllCameUpThereIsNoShareLeftToEstimate() {
        Counting all = new Counting(
                9,
                List.of(
                        new Counting.Interval(0, 20, 3),
                        new Counting.Interval(20, 27, 3),
                        new Counting.Interval(27, 34, 3)));
        assertEquals(Optional.empty(), CurveFit.of(all));
    }

    @Test
    void whatDampedOffHadComeUpAllTheSame() {
        Program program = Records.of(
                """
                seedlots: code,sown_on,sown
                L1,2026-03-01,40
                emergence: lot,date,emerged
                L1,2026-03-22,10
                L1,2026-03-29,25
                L1,2026-04-05,22
                L1,2026-04-12,27
                """);
        LotEmergence lot = LotEmergence.of(
                        program, program.find(Kinds.SEEDLOTS, Code.of("L1")).orElseThrow())
                .orElseThrow();
        assertEquals(
                List.of(10, 15, 0, 2),
                lot.counting().intervals().stream()
                        .map(Counting.Interval::emerged)
                        .toList());
        assertEquals(27.0 / 40, lot.share(), 1e-12);
    }

    @Test
    void thePictureOfEmergenceStaysInsideItsFrame() {
        StringBuilder records = new StringBuilder("seedlots: code,sown_on,sown\n");
        StringBuilder counts = new StringBuilder("emergence: lot,date,emerged\n");
        for (int lot = 1; lot <= 8; lot++) {
            records.append("L" + lot + ",2026-03-01,60\n");
            counts.append("L%d,2026-03-22,5%nL%d,2026-03-29,20%nL%d,2026-04-05,30%nL%d,2026-04-12,%d%n"
                    .formatted(lot, lot, lot, lot, 31 + lot));
        }
        Program program = Records.of(records.toString() + counts);
        List<LotEmergence> lots = program.table(Kinds.SEEDLOTS).stream()
                .flatMap(lot -> LotEmergence.of(program, lot).stream())
                .toList();
        assertTrue(lots.stream().allMatch(lot -> lot.curve().isPresent()));
        Ink ink = Ink.of(new EmergencePicture(lots), 483, 203);
        assertTrue(ink.inside() > 2000, ink.toString());
        assertEquals(0, ink.outside());
    }

    private static Counting chickweed() throws IOException {
        List<Counting.Interval> intervals = new ArrayList<>();
        int sown = 0;
        for (String[] cells : table("chickweed.csv")) {
            int count = Integer.parseInt(cells[2]);
            sown += count;
            if (!cells[1].equals("Inf")) {
                intervals.add(new Counting.Interval(Double.parseDouble(cells[0]), Double.parseDouble(cells[1]), count));
            }
        }
        return new Counting(sown, intervals);
    }

    private static Counting timeIndices(String set) throws IOException {
        List<Counting.Interval> intervals = new ArrayList<>();
        double before = 0;
        int sown = 0;
        for (String[] cells : table("time-indices.csv")) {
            if (cells[0].equals(set)) {
                double day = Double.parseDouble(cells[1]);
                intervals.add(new Counting.Interval(before, day, Integer.parseInt(cells[2])));
                before = day;
                sown = Integer.parseInt(cells[3]);
            }
        }
        return new Counting(sown, intervals);
    }

    private static List<String[]> table(String name) throws IOException {
        try (InputStream file = EmergenceTest.class.getResourceAsStream("/germination/" + name)) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .skip(1)
                    .map(line -> line.split(","))
                    .toList();
        }
    }
}
