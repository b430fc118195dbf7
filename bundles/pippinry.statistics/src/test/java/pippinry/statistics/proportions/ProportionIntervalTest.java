package pippinry.statistics.proportions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pippinry.statistics.ExpectedValues;

class ProportionIntervalTest {

    @Test
    void wilsonAgreesWithTheWorkedPenetrance() {
        // formulae.md, section 6: 22 of 26.
        Interval limits = ProportionInterval.wilson(22, 26, 0.95);
        assertEquals(0.6647, limits.low(), 5e-5);
        assertEquals(0.9385, limits.high(), 5e-5);
    }

    @Test
    void noRecombinantLeavesASmallUpperLimit() {
        // formulae.md, section 6: none among 516; red flesh, Chagne et al. 2007, BMC Genomics 8:212.
        assertEquals(1 - Math.pow(0.05, 1.0 / 516), ProportionInterval.upperLimit(0, 516, 0.95), 1e-12);
        assertEquals(0.00579, ProportionInterval.upperLimit(0, 516, 0.95), 5e-6);
    }

    // check-tree-lower-bound.csv of the disease reference, exact one-sided 95 % bounds.
    @ParameterizedTest
    @CsvSource({"2, 3, 0.1354", "3, 3, 0.3684", "4, 5, 0.3426", "5, 5, 0.5493"})
    void infectedCheckTreesGiveALowerLimit(int infected, int checks, double limit) {
        assertEquals(limit, ProportionInterval.lowerLimit(infected, checks, 0.95), 5e-5);
    }

    @Test
    void exactLimitsLeaveExactlyTheirTails() {
        Interval limits = ProportionInterval.exact(7, 20, 0.95);
        assertEquals(0.025, 1 - new KnownShare(limits.low()).fewerThan(7, 20), 1e-12);
        assertEquals(0.025, new KnownShare(limits.high()).fewerThan(8, 20), 1e-12);
        assertEquals(0, ProportionInterval.exact(0, 20, 0.95).low());
        assertEquals(1, ProportionInterval.exact(20, 20, 0.95).high());
        assertThrows(IllegalArgumentException.class, () -> ProportionInterval.wilson(3, 2, 0.95));
    }

    @Test
    void plantsThatTellTwoRatiosApart() {
        ExpectedValues values = ExpectedValues.of("05-segregation/family-size");
        values.vector("n_to_separate_1to1_from_3to1", error -> TellingRatiosApart.needed(
                        0.5, 0.75, Double.parseDouble(error.replace("%", "")) / 100)
                .orElseThrow());
        values.vector(
                "power_chi_square_1to1_when_3to1_n20_30_40_60",
                n -> TellingRatiosApart.power(0.5, 0.75, Integer.parseInt(n), 0.05));
    }
}
