package pippinry.statistics.selection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pippinry.statistics.ExpectedValues;

class ResponseTest {

    private static final ExpectedValues VALUES = ExpectedValues.of("03-selection/breeders-equation");

    @Test
    void handSizedExamplesAgree() {
        VALUES.scalar("mass.R", Response.ofPhenotypes(1.755, 0.25, 8));
        VALUES.scalar("both_parents_equal.R", Response.ofPhenotypes(2.063, 0.4, 10));
        VALUES.scalar("accuracy_form.R", Response.ofAccuracy(1.4, 0.7, 3.2));
        VALUES.scalar("two_sexes.R", Response.ofPhenotypes((1.4 + 2.063) / 2, 0.36, 5));
        VALUES.vector("h2_of_mean_of_n_records", n -> Response.heritabilityOfMean(0.25, 0.4, Integer.parseInt(n)));
        VALUES.vector(
                "gain_ratio_of_n_records",
                n -> Math.sqrt(Response.heritabilityOfMean(0.25, 0.4, Integer.parseInt(n)) / 0.25));
        double correlated = Response.correlated(1.4, 0.6, 0.5, 0.45, 7);
        VALUES.vector(
                "correlated_response",
                label -> label.equals("CR") ? correlated : correlated / Response.ofPhenotypes(1.4, 0.25, 7));
    }

    // formulae.md, section 11: cross A mean 60 and deviation 6, cross B mean 64 and deviation 3, h = sqrt(0.5).
    @ParameterizedTest
    @CsvSource({
        "10, 66.5284, 67.2642",
        "20, 67.9230, 67.9615",
        "21, 68.0151, 68.0075",
        "25, 68.3381, 68.1691",
        "100, 70.6388, 69.3194"
    })
    void theSaferCrossWinsInSmallFamilies(int seedlings, double a, double b) {
        double best = NormalOrder.expectedBest(seedlings);
        assertEquals(a, Response.usefulness(60, best, Math.sqrt(0.5), 6), 5e-5);
        assertEquals(b, Response.usefulness(64, best, Math.sqrt(0.5), 3), 5e-5);
    }

    @Test
    void chanceOfOneAboveGrowsWithTheFamily() {
        // One value: upper tail of the normal at 1.281552 is 0.1; ten values: 1 - 0.9^10.
        assertEquals(0.1, Response.atLeastOneAbove(1.2815515655446, 0, 1, 1), 1e-12);
        assertEquals(1 - Math.pow(0.9, 10), Response.atLeastOneAbove(1.2815515655446, 0, 1, 10), 1e-12);
        assertTrue(Response.atLeastOneAbove(40, 0, 1, 1000) >= 0);
        assertThrows(IllegalArgumentException.class, () -> Response.ofPhenotypes(1, 1.2, 3));
    }
}
