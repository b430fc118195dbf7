package pippinry.statistics.additive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class AdditiveFitTest {

    @Test
    void exactSumsComeBackFromUnbalancedRecords() {
        List<AdditiveFit.Observation> records = List.of(
                of("early", "2020", 130),
                of("late", "2020", 137),
                of("early", "2021", 124),
                of("middle", "2021", 127),
                of("late", "2022", 141),
                of("middle", "2022", 137));
        AdditiveFit fit = new AdditiveFit(2, records);
        assertEquals(7, fit.difference(0, "late", "early").orElseThrow().value(), 1e-9);
        assertEquals(3, fit.difference(0, "middle", "early").orElseThrow().value(), 1e-9);
        assertEquals(10, fit.difference(1, "2022", "2021").orElseThrow().value(), 1e-9);
        assertEquals(
                131,
                fit.expected(List.of(Optional.of("late"), Optional.of("2021")))
                        .orElseThrow()
                        .value(),
                1e-9);
        assertEquals(0, fit.residualVariance(), 1e-12);
    }

    @Test
    void levelsThatNoRecordJoinsAreNotCompared() {
        AdditiveFit fit = new AdditiveFit(
                2, List.of(of("a", "2020", 1), of("b", "2020", 3), of("c", "2021", 5), of("d", "2021", 9)));
        assertEquals(2, fit.difference(0, "b", "a").orElseThrow().value(), 1e-9);
        assertEquals(Optional.empty(), fit.difference(0, "c", "a"));
        assertEquals(Optional.empty(), fit.difference(0, "a", "never seen"));
    }

    @Test
    void balancedRecordsGiveTheTextbookStandardError() {
        // Two-way layout without interaction: variance of a difference of two row means is 2 s^2 / columns.
        Random dice = new Random(3);
        List<AdditiveFit.Observation> records = new ArrayList<>();
        for (int row = 0; row < 4; row++) {
            for (int column = 0; column < 5; column++) {
                records.add(of("r" + row, "c" + column, 3 * row - column + dice.nextGaussian()));
            }
        }
        AdditiveFit fit = new AdditiveFit(2, records);
        assertEquals(12, fit.degreesOfFreedom());
        assertEquals(
                Math.sqrt(2 * fit.residualVariance() / 5),
                fit.difference(0, "r1", "r0").orElseThrow().standardError(),
                1e-9);
        // t for 12 degrees of freedom, two-sided 95 %: 2.178813 (any table).
        AdditiveFit.Difference gap = fit.difference(0, "r1", "r0").orElseThrow();
        assertEquals(2.178813 * gap.standardError(), fit.reach(gap, 0, 0.95), 1e-6);
        assertTrue(fit.reach(gap, 2, 0.95) > fit.reach(gap, 0, 0.95));
        assertTrue(fit.residualVariance() > 0.2 && fit.residualVariance() < 3);
    }

    @Test
    void oneFactorAloneGivesItsMeans() {
        AdditiveFit fit = new AdditiveFit(
                1,
                List.of(
                        new AdditiveFit.Observation(List.of("a"), 1),
                        new AdditiveFit.Observation(List.of("a"), 3),
                        new AdditiveFit.Observation(List.of("b"), 7)));
        assertEquals(5, fit.difference(0, "b", "a").orElseThrow().value(), 1e-12);
        assertEquals(1, fit.degreesOfFreedom());
        assertEquals(2, fit.residualVariance(), 1e-12);
        assertEquals(
                Math.sqrt(2 * (1 + 0.5)),
                fit.difference(0, "b", "a").orElseThrow().standardError(),
                1e-12);
        assertEquals(2, fit.records("a"));
    }

    @Test
    void aThirdFactorIsTakenOutToo() {
        List<AdditiveFit.Observation> records = new ArrayList<>();
        for (String kind : List.of("a", "b", "c")) {
            for (String year : List.of("1", "2")) {
                for (String stage : List.of("61", "65", "69")) {
                    if (!(kind.equals("b") && stage.equals("65"))) {
                        records.add(new AdditiveFit.Observation(
                                List.of(kind, year, stage),
                                kind.charAt(0) * 2 + 10 * Integer.parseInt(year) + Integer.parseInt(stage)));
                    }
                }
            }
        }
        AdditiveFit fit = new AdditiveFit(3, records);
        assertEquals(2, fit.difference(0, "b", "a").orElseThrow().value(), 1e-9);
        assertEquals(4, fit.difference(2, "65", "61").orElseThrow().value(), 1e-9);
        assertEquals(
                'b' * 2 + 15 + 65,
                fit.expected(List.of(Optional.of("b"), Optional.empty(), Optional.of("65")))
                        .orElseThrow()
                        .value(),
                1e-9);
    }

    private static AdditiveFit.Observation of(String one, String other, double value) {
        return new AdditiveFit.Observation(List.of(one, other), value);
    }
}
