package pippinry.statistics.selection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pippinry.statistics.ExpectedValues;

class NormalOrderTest {

    private static final ExpectedValues ORDER = ExpectedValues.of("03-selection/order-statistics");

    @Test
    void closedFormsAndQuadratureOfTwoProgramsAgree() {
        ORDER.vector("closed_form(n,rank)", label -> NormalOrder.expected(part(label, 0), part(label, 1)));
        ORDER.vector("expected_maximum", n -> NormalOrder.expectedBest(Integer.parseInt(n)));
        ORDER.vector("variance_of_maximum", n -> NormalOrder.variance(Integer.parseInt(n), 1));
    }

    @ParameterizedTest
    @ValueSource(ints = {10, 20, 50})
    void everyRankAgrees(int n) {
        ORDER.vector("all_ranks.n" + n, rank -> NormalOrder.expected(n, Integer.parseInt(rank)));
    }

    @Test
    void everySeventhRowOfTheTableAgrees() throws IOException {
        List<String> rows = table("/checks/03-selection/order-statistics/data.csv");
        for (int i = 0; i < rows.size(); i += 7) {
            String[] cells = rows.get(i).split(",");
            int n = Integer.parseInt(cells[0]);
            int rank = Integer.parseInt(cells[1]);
            assertEquals(Double.parseDouble(cells[2]), NormalOrder.expected(n, rank), 1e-10, rows.get(i));
            assertEquals(Double.parseDouble(cells[3]), NormalOrder.variance(n, rank), 1e-9, rows.get(i));
        }
    }

    private static List<String> table(String resource) throws IOException {
        try (BufferedReader in = new BufferedReader(
                new InputStreamReader(NormalOrderTest.class.getResourceAsStream(resource), StandardCharsets.UTF_8))) {
            return in.lines().skip(1).toList();
        }
    }

    // formulae.md, section 9: mean of the best of a finite number, exact and by the short form of Burrows.
    @ParameterizedTest
    @CsvSource({
        "1, 10, 1.5388, 1.5219",
        "2, 10, 1.2701, 1.2699",
        "4, 20, 1.3318, 1.3318",
        "5, 50, 1.7055, 1.7047",
        "2, 100, 2.3279, 2.3207",
        "5, 100, 2.0182, 2.0171",
        "10, 100, 1.7298, 1.7296",
        "20, 100, 1.3857, 1.3857"
    })
    void meanOfTheBestOfAFamily(int kept, int n, double exact, double shortForm) {
        assertEquals(exact, NormalOrder.meanOfBest(kept, n), 5e-5);
        assertEquals(shortForm, NormalOrder.burrows(kept, n), 5e-5);
    }

    @Test
    void meanOfTheBestIsTheMeanOfTheRanks() {
        double sum = 0;
        for (int rank = 1; rank <= 13; rank++) {
            sum += NormalOrder.expected(37, rank);
        }
        assertEquals(sum / 13, NormalOrder.meanOfBest(13, 37), 1e-11);
        assertEquals(0, NormalOrder.meanOfBest(9, 9));
    }

    // formulae.md, section 9.
    @ParameterizedTest
    @CsvSource({"2000, 3.4353", "5000, 3.6776"})
    void veryLargeFamilies(int n, double expected) {
        assertEquals(expected, NormalOrder.expectedBest(n), 5e-5);
    }

    @Test
    void intensityAgreesWithTables() {
        ExpectedValues table = ExpectedValues.of("03-selection/selection-intensity");
        table.vector("i", p -> SelectionIntensity.of(Double.parseDouble(p)).intensity());
        table.vector("x", p -> SelectionIntensity.of(Double.parseDouble(p)).truncation());
        table.vector("k", p -> SelectionIntensity.of(Double.parseDouble(p)).varianceLost());
    }

    @Test
    void ranksOutsideTheFamilyAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> NormalOrder.expected(5, 6));
        assertThrows(IllegalArgumentException.class, () -> SelectionIntensity.of(0));
    }

    private static int part(String label, int i) {
        return Integer.parseInt(label.split(",")[i]);
    }
}
