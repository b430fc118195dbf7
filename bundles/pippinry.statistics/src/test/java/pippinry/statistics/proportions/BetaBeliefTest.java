package pippinry.statistics.proportions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import pippinry.statistics.ExpectedValues;

class BetaBeliefTest {

    private static final String FOLDER = "05-segregation/beta-binomial";
    private static final double[][] RATIOS = {{1, 1}, {3, 1}, {1, 3}};

    @ParameterizedTest
    @CsvFileSource(resources = "/checks/05-segregation/beta-binomial/data.csv", numLinesToSkip = 1)
    void agreesWithBetaFunctionsOfAnotherProgram(String name, long yes, long no, double a, double b) {
        ExpectedValues values = ExpectedValues.of(FOLDER);
        BetaBelief belief = new BetaBelief(a, b).seeing(yes, no);
        values.vector(
                name + ".posterior",
                Map.of("a", belief.a(), "b", belief.b(), "mean", belief.mean(), "variance", belief.variance())::get);
        values.vector(name + ".quantiles", label -> belief.quantile(percent(label)));
        values.scalar(name + ".prob_above_0.5", belief.above(0.5));
        values.vector(name + ".predictive_next_10", label -> belief.next(Integer.parseInt(label), 10));
        Interval shortest = belief.shortest(0.95);
        values.vector(name + ".hpd95", Map.of("lower", shortest.low(), "upper", shortest.high())::get);
        if (values.has(name + ".mode")) {
            values.scalar(name + ".mode", belief.mode());
        } else {
            assertThrows(IllegalStateException.class, belief::mode);
        }
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/checks/05-segregation/beta-binomial/data.csv", numLinesToSkip = 1)
    void weighsSimpleRatiosAsAnotherProgramDoes(String name, long yes, long no) {
        ExpectedValues values = ExpectedValues.of(FOLDER);
        double[] logs = new double[3];
        for (int i = 0; i < 3; i++) {
            logs[i] = RatioEvidence.logLikelihood(new Classes(new long[] {yes, no}, RATIOS[i]));
        }
        double uniform = BetaBelief.UNIFORM.next(yes, yes + no);
        values.vector(
                name + ".marginal_likelihood",
                Map.of(
                        "1:1", Math.exp(logs[0]),
                        "3:1", Math.exp(logs[1]),
                        "1:3", Math.exp(logs[2]),
                        "uniform prior", uniform)::get);
        double[] after = RatioEvidence.posterior(new double[] {1, 1, 1}, logs);
        values.vector(
                name + ".posterior_equal_prior_1to1_3to1_1to3",
                Map.of("1:1", after[0], "3:1", after[1], "1:3", after[2])::get);
    }

    @Test
    void aRunOfResistantSeedlingsSpeaksForAHomozygousParent() {
        ExpectedValues values = ExpectedValues.of(FOLDER);
        values.vector("parent_homozygous_after_n_resistant_testcross", n -> homozygous(0.5, Integer.parseInt(n)));
        values.vector("parent_homozygous_prior_third", n -> homozygous(1.0 / 3, Integer.parseInt(n)));
    }

    private static double homozygous(double prior, int resistant) {
        double[] logs = {
            RatioEvidence.logLikelihood(new Classes(new long[] {resistant, 0}, new double[] {1, 0})),
            RatioEvidence.logLikelihood(new Classes(new long[] {resistant, 0}, new double[] {1, 1}))
        };
        return RatioEvidence.posterior(new double[] {prior, 1 - prior}, logs)[0];
    }

    @Test
    void foretoldCountsAddUpToCertainty() {
        BetaBelief belief = new BetaBelief(0.7, 2.2);
        double sum = 0;
        for (int k = 0; k <= 50; k++) {
            assertEquals(sum, belief.fewerThan(k, 50), 1e-12);
            sum += belief.next(k, 50);
        }
        assertEquals(1, sum, 1e-12);
    }

    @Test
    void momentsComeBack() {
        BetaBelief belief = BetaBelief.ofMoments(0.3, 0.01);
        assertEquals(0.3, belief.mean(), 1e-15);
        assertEquals(0.01, belief.variance(), 1e-15);
        assertEquals(1, BetaBelief.ofMoments(0.3, 0.2).strength(), 1e-15);
    }

    @Test
    void productKeepsMeanAndVarianceOfTheTrueProduct() {
        BetaBelief x = new BetaBelief(8, 3);
        BetaBelief y = new BetaBelief(20, 4);
        BetaBelief product = x.times(y);
        double mean = x.mean() * y.mean();
        double square = (x.variance() + x.mean() * x.mean()) * (y.variance() + y.mean() * y.mean());
        assertEquals(mean, product.mean(), 1e-14);
        assertEquals(square - mean * mean, product.variance(), 1e-14);
    }

    @Test
    void nineValuesGiveANarrowerPriorThanTwoOfTheSameRange() {
        BetaBelief nine = new PublishedRange(0.0667, 0.5667, 0.8333, 9).prior();
        BetaBelief two = new PublishedRange(0.0667, 0.5667, 0.8333, 2).prior();
        assertEquals(0.5667, nine.mean(), 1e-12);
        assertTrue(nine.variance() < two.variance());
        // The range of nine normal values is 2.970 standard deviations (d2 of quality control tables, from memory).
        assertEquals((0.8333 - 0.0667) / 2.970, Math.sqrt(nine.variance()), 1e-4);
    }

    private static double percent(String label) {
        return Double.parseDouble(label.replace("%", "")) / 100;
    }
}
