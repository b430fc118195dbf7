package pippinry.statistics.proportions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pippinry.statistics.ExpectedValues;

class GoodnessOfFitTest {

    private static final ExpectedValues MENDEL = ExpectedValues.of("05-segregation/mendel");

    @Test
    void agreesOnMendelsPeas() throws IOException {
        Map<String, Classes> traits = mendel();
        MENDEL.vector("chi_square", t -> GoodnessOfFit.of(traits.get(t)).chiSquare());
        MENDEL.vector("p_value", t -> GoodnessOfFit.of(traits.get(t)).p());
        MENDEL.vector(
                "chi_square_yates", t -> GoodnessOfFit.corrected(traits.get(t)).chiSquare());
        MENDEL.vector(
                "p_value_yates", t -> GoodnessOfFit.corrected(traits.get(t)).p());
        MENDEL.vector("G", t -> GoodnessOfFit.likelihoodRatio(traits.get(t)).chiSquare());
        MENDEL.vector(
                "p_value_G", t -> GoodnessOfFit.likelihoodRatio(traits.get(t)).p());
        MENDEL.vector("exact_binomial_two_sided", t -> ExactMultinomial.p(traits.get(t))
                .orElseThrow());
    }

    @Test
    void sevenFamiliesOfMendelFitTooWellTogether() throws IOException {
        List<long[]> families = new ArrayList<>();
        mendel().forEach((trait, c) -> {
            if (c.count() == 2) {
                families.add(new long[] {c.observed(0), c.observed(1)});
            }
        });
        Heterogeneity all = Heterogeneity.of(families, new double[] {3, 1});
        MENDEL.vector(
                "sum_of_seven",
                Map.of(
                        "chi2",
                        all.sum().chiSquare(),
                        "df",
                        (double) all.sum().degrees(),
                        "p",
                        all.sum().p())::get);
        // formulae.md, section 6: pooled 14949:5010.
        assertEquals(0.1096, all.pooled().chiSquare(), 5e-5);
        assertEquals(0.7406, all.pooled().p(), 5e-5);
        assertEquals(2.0293, all.difference().chiSquare(), 5e-5);
        assertEquals(6, all.difference().degrees());
        assertEquals(0.9170, all.difference().p(), 5e-5);
        assertEquals(6, all.contingency().degrees());
        // The pooled counts fit, so both ways of asking agree closely.
        assertEquals(all.difference().chiSquare(), all.contingency().chiSquare(), 0.02);
    }

    // segregation.csv of the genetics reference: pummelo S-genotypes (Nature Plants 2020, 6:131-142, Table 1) and sour
    // cherry
    // S-haplotypes (Hauck et al. 2006, Genetics 172:1191-1198, Table 3); chi-square to the printed digits.
    @ParameterizedTest
    @CsvSource({
        "22 17 15 23, 1 1 1 1, 2.32, 3, 0.51, 0.005",
        "0 0 56 62, 0 0 1 1, 0.31, 1, 0.58, 0.005",
        "0 0 34 25, 0 0 1 1, 1.37, 1, 0.24, 0.005",
        "0 0 53 62, 0 0 1 1, 0.70, 1, 0.40, 0.05",
        "0 0 21 21, 0 0 1 1, 0, 1, 1, 0.005",
        "0 0 39 37, 0 0 1 1, 0.05, 1, 0.82, 0.005",
        "0 0 62 51, 0 0 1 1, 1.07, 1, 0.30, 0.005",
        "28 26, 1 1, 0.07, 1, 0.7855, 0.005",
        "23 31, 1 1, 1.19, 1, 0.2763, 0.005",
        "24 35, 1 1, 2.05, 1, 0.1521, 0.005",
        "36 23, 1 1, 2.86, 1, 0.0906, 0.005",
        "9 16, 1 1, 1.96, 1, 0.1615, 0.005",
        "20 5, 1 1, 9.00, 1, 0.0027, 0.005"
    })
    void agreesWithPrintedTests(String seen, String ratio, double chi, int degrees, double p, double rounding) {
        GoodnessOfFit fit = GoodnessOfFit.of(classes(seen, ratio));
        assertEquals(chi, fit.chiSquare(), rounding);
        assertEquals(degrees, fit.degrees());
        assertEquals(p, fit.p(), 0.005);
    }

    @ParameterizedTest
    @CsvSource({"0 0 34 25, 1 1 1 1, 61.7458, 2.48996e-13", "0 0 56 62, 1 1 1 1, 118.6102, 1.53726e-25"})
    void verySmallProbabilitiesKeepTheirDigits(String seen, String ratio, double chi, double p) {
        GoodnessOfFit fit = GoodnessOfFit.of(classes(seen, ratio));
        assertEquals(chi, fit.chiSquare(), 5e-5);
        assertEquals(p, fit.p(), p * 1e-5);
    }

    // formulae.md, section 6.
    @ParameterizedTest
    @CsvSource({"9 16, 0.2295, 5e-5", "20 5, 0.00408, 5e-6"})
    void exactTestAgreesWithWorkedExamples(String seen, double p, double rounding) {
        assertEquals(p, ExactMultinomial.p(classes(seen, "1 1")).orElseThrow(), rounding);
    }

    @Test
    void exactTestOfThreeClassesGoesThroughEveryOutcome() {
        // Two plants, 1:2:1. Outcomes: (2,0,0) 1/16, (0,2,0) 1/4, (0,0,2) 1/16, (1,1,0) 1/4, (1,0,1) 1/8, (0,1,1) 1/4.
        assertEquals(0.125, ExactMultinomial.p(classes("2 0 0", "1 2 1")).orElseThrow(), 1e-12);
        assertEquals(0.25, ExactMultinomial.p(classes("1 0 1", "1 2 1")).orElseThrow(), 1e-12);
        assertEquals(1, ExactMultinomial.p(classes("0 2 0", "1 2 1")).orElseThrow(), 1e-12);
    }

    @Test
    void aPlantInAForbiddenClassRefutesTheRatio() {
        Classes classes = classes("1 0 56 62", "0 0 1 1");
        assertTrue(classes.refuted());
        assertEquals(0, GoodnessOfFit.of(classes).p());
        assertEquals(OptionalDouble.of(0), ExactMultinomial.p(classes));
    }

    @Test
    void tooManyOutcomesAreDeclined() {
        Classes large = classes("900 300 300 100", "9 3 3 1");
        assertTrue(ExactMultinomial.outcomes(large) > 1e8);
        assertEquals(OptionalDouble.empty(), ExactMultinomial.p(large));
        assertEquals(66, ExactMultinomial.outcomes(classes("5 3 2", "1 2 1")));
    }

    @Test
    void oneAllowedClassFitsAlways() {
        assertEquals(1, GoodnessOfFit.of(classes("7 0", "1 0")).p());
        assertEquals(OptionalDouble.of(1), ExactMultinomial.p(classes("7 0", "1 0")));
    }

    @Test
    void nonsenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> classes("0 0", "1 1"));
        assertThrows(IllegalArgumentException.class, () -> classes("3 -1", "1 1"));
        assertThrows(IllegalArgumentException.class, () -> classes("3 1 2", "1 1"));
        assertThrows(IllegalArgumentException.class, () -> classes("3 1", "0 0"));
    }

    private static Classes classes(String seen, String ratio) {
        return new Classes(
                Arrays.stream(seen.split(" ")).mapToLong(Long::parseLong).toArray(),
                Arrays.stream(ratio.split(" ")).mapToDouble(Double::parseDouble).toArray());
    }

    private static Map<String, Classes> mendel() throws IOException {
        Map<String, List<double[]>> rows = new LinkedHashMap<>();
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                GoodnessOfFitTest.class.getResourceAsStream("/checks/05-segregation/mendel/data.csv"),
                StandardCharsets.UTF_8))) {
            in.lines().skip(1).map(line -> line.split(",")).forEach(cells -> rows.computeIfAbsent(
                            cells[0], t -> new ArrayList<>())
                    .add(new double[] {Double.parseDouble(cells[2]), Double.parseDouble(cells[3])}));
        }
        Map<String, Classes> traits = new LinkedHashMap<>();
        rows.forEach((trait, cells) -> traits.put(
                trait,
                new Classes(
                        cells.stream().mapToLong(c -> (long) c[0]).toArray(),
                        cells.stream().mapToDouble(c -> c[1]).toArray())));
        return traits;
    }
}
