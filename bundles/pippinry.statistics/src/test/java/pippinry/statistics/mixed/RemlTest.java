package pippinry.statistics.mixed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RemlTest {
    /** A small table and the values that R 4.2.2 with lme4 1.1-31 and, separately, dense algebra gave for it. */
    private record Case(List<String[]> rows, List<String> header, JsonNode checks) {
        static Case of(String name) throws IOException {
            try (BufferedReader in = new BufferedReader(
                    new InputStreamReader(RemlTest.class.getResourceAsStream(name + ".csv"), StandardCharsets.UTF_8))) {
                List<String> header = List.of(in.readLine().split(","));
                List<String[]> rows = in.lines().map(line -> line.split(",")).toList();
                JsonNode json = new ObjectMapper().readTree(RemlTest.class.getResourceAsStream(name + ".json"));
                return new Case(rows, header, json.get("checks"));
            }
        }

        double[] numbers(String column) {
            return texts(column).stream().mapToDouble(Double::parseDouble).toArray();
        }

        List<String> texts(String column) {
            int place = header.indexOf(column);
            return rows.stream().map(row -> row[place]).toList();
        }

        List<String> levels(String column) {
            return List.copyOf(new TreeSet<>(texts(column)));
        }

        RandomTerm random(String name, String column) {
            List<String> levels = levels(column);
            int[] levelOf = texts(column).stream().mapToInt(levels::indexOf).toArray();
            return RandomTerm.independent(name, levels.size(), levelOf);
        }

        JsonNode check(String key) {
            for (JsonNode check : checks) if (check.get("key").asText().equals(key)) return check;
            throw new IllegalArgumentException(key);
        }

        void agrees(String key, int place, double got) {
            JsonNode check = check(key);
            double expected = check.get("value").isArray()
                    ? check.get("value").get(place).asDouble()
                    : check.get("value").asDouble();
            double tolerance = check.get("tol").asDouble();
            boolean relative = check.get("tolKind").asText().equals("rel");
            double allowed = relative ? tolerance * Math.abs(expected) : tolerance + 1e-13 * Math.abs(expected);
            assertEquals(expected, got, allowed, key + " " + place);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "dyestuff, '', Yield, Batch, ''",
        "pastes, '', strength, sample, batch",
        "rail, '', travel, Rail, ''",
        "sleepstudy, intercept_only., Reaction, Subject, ''"
    })
    void publishedSetsGiveTheirVariancesAndEffects(
            String name, String prefix, String value, String first, String second) throws IOException {
        Case published = Case.of(name);
        MixedModel.Draft draft = MixedModel.of(published.numbers(value));
        if (name.equals("sleepstudy")) draft.covariate("Days", published.numbers("Days"));
        draft.random(published.random(first, first));
        if (!second.isEmpty()) draft.random(published.random(second, second));
        Estimates estimates = Reml.of(draft.done());
        int place = 0;
        for (Estimates.Value variance : estimates.variances().values()) {
            published.agrees(prefix + "reml.variances", place++, variance.value());
        }
        published.agrees(prefix + "reml.loglik", 0, estimates.logLikelihood());
        place = 0;
        for (Estimates.Value effect : estimates.fixed().values()) {
            published.agrees(prefix + "reml.fixed", place, effect.value());
            published.agrees(prefix + "reml.fixed_se", place++, effect.se());
        }
        for (String term : second.isEmpty() ? List.of(first) : List.of(first, second)) {
            levels(published, prefix, term, estimates.effects(term));
        }
        assertEquals(List.of(), estimates.notes());
    }

    private static void levels(Case published, String prefix, String term, List<Estimates.Effect> effects) {
        JsonNode labels = published.check(prefix + "reml.blup." + term).get("labels");
        List<String> levels = published.levels(term);
        for (int i = 0; i < labels.size(); i++) {
            Estimates.Effect effect = effects.get(levels.indexOf(labels.get(i).asText()));
            published.agrees(prefix + "reml.blup." + term, i, effect.value());
            published.agrees(prefix + "reml.pev." + term, i, effect.se() * effect.se());
        }
    }

    /** Balanced, so that average information is the expected one for the residual; the other figures are near it. */
    @Test
    void varianceOfBatchesHasTheStandardErrorOfTheInformation() throws IOException {
        Case dyestuff = Case.of("dyestuff");
        Estimates estimates = Reml.of(MixedModel.of(dyestuff.numbers("Yield"))
                .random(dyestuff.random("Batch", "Batch"))
                .done());
        Map<String, Estimates.Value> variances = estimates.variances();
        JsonNode expected = dyestuff.check("reml.se_of_variances").get("value");
        assertEquals(
                expected.get(0).asDouble(),
                variances.get("Batch").se(),
                0.01 * expected.get(0).asDouble());
        assertEquals(
                expected.get(1).asDouble(),
                variances.get("residual").se(),
                0.01 * expected.get(1).asDouble());
        assertEquals(
                dyestuff.check("intraclass_correlation").get("value").asDouble(),
                estimates.share("Batch").value(),
                1e-6);
        assertTrue(
                estimates.share("Batch").se() > 0.1 && estimates.share("Batch").se() < 0.4);
    }

    /** Batches that differ less than chance would have them: analysis of variance gives a negative variance, REML zero. */
    @Test
    void aVarianceOnTheBoundaryIsExactlyZeroAndSaidSo() {
        double[] y = {1, 2, 3, 4, 4, 3, 2, 1, 1.5, 2.5, 3.5, 2.4};
        int[] batch = {0, 0, 0, 0, 1, 1, 1, 1, 2, 2, 2, 2};
        Estimates estimates = Reml.of(MixedModel.of(y)
                .random(RandomTerm.independent("batch", 3, batch))
                .done());
        double mean = Arrays.stream(y).average().orElseThrow();
        double variance = Arrays.stream(y).map(v -> (v - mean) * (v - mean)).sum() / 11;
        assertEquals(0, estimates.variances().get("batch").value());
        assertEquals(variance, estimates.variances().get("residual").value(), 1e-9);
        assertEquals(new Estimates.Effect(0, 0, 0), estimates.effects("batch").get(1));
        assertEquals(
                List.of("The variance of batch is zero: the records are likeliest without it."), estimates.notes());
        assertEquals(0, estimates.share("batch").value());
    }

    @Test
    void aTermWithoutRepeatsIsPartOfTheResidual() {
        double[] y = {1, 2, 4, 8};
        Estimates estimates = Reml.of(MixedModel.of(y)
                .random(RandomTerm.independent("tree", 4, new int[] {0, 1, 2, 3}))
                .done());
        assertTrue(estimates.notes().get(0).startsWith("No level of tree has a second record"));
    }

    @Test
    void columnsThatDependOnOthersAreDropped() {
        double[] y = {1, 2, 4, 8, 3, 5};
        double[] x = {1, 2, 3, 4, 5, 6};
        MixedModel model = MixedModel.of(y)
                .covariate("x", x)
                .covariate("twice x", Arrays.stream(x).map(v -> 2 * v).toArray())
                .classes(List.of("2024", "2025"), new int[] {0, 0, 0, 1, 1, 1})
                .covariate("all ones", new double[] {1, 1, 1, 1, 1, 1})
                .done();
        assertEquals(List.of("intercept", "x", "2025"), model.fixedColumns());
    }

    @Test
    void recordsThatTellNothingAreRefusedInWords() {
        assertThrows(CannotBeEstimated.class, () -> MixedModel.of(new double[] {1, Double.NaN}));
        MixedModel equal = MixedModel.of(new double[] {5, 5, 5, 5})
                .random(RandomTerm.independent("tree", 2, new int[] {0, 0, 1, 1}))
                .done();
        CannotBeEstimated refused = assertThrows(CannotBeEstimated.class, () -> Reml.of(equal));
        assertTrue(refused.getMessage().contains("all records are equal"));
        assertThrows(
                CannotBeEstimated.class, () -> MixedModel.of(new double[] {5}).done());
    }

    /** Simulated with variances 4 and 1: 400 trees, five years. */
    @Test
    void simulatedVariancesComeBack() {
        Random random = new Random(5);
        double[] y = new double[2000];
        int[] tree = new int[2000];
        int[] year = new int[2000];
        double[] u = random.doubles(400).map(x -> 2 * random.nextGaussian()).toArray();
        for (int i = 0; i < y.length; i++) {
            tree[i] = i / 5;
            year[i] = i % 5;
            y[i] = 50 + 3 * year[i] + u[tree[i]] + random.nextGaussian();
        }
        Estimates estimates = Reml.of(MixedModel.of(y)
                .classes(List.of("1", "2", "3", "4", "5"), year)
                .random(RandomTerm.independent("tree", 400, tree))
                .done());
        Estimates.Value trees = estimates.variances().get("tree");
        assertEquals(4, trees.value(), 3 * trees.se());
        assertEquals(1, estimates.variances().get("residual").value(), 0.15);
        assertEquals(6, estimates.fixed().get("3").value(), 0.3);
    }
}
