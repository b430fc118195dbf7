package pippinry.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * Check values somebody else computed, in {@code src/test/resources/checks}; {@code source.md} beside each says how and
 * from what.
 */
public final class ExpectedValues {

    private final JsonNode checks;

    private ExpectedValues(JsonNode checks) {
        this.checks = checks;
    }

    public static ExpectedValues of(String folder) {
        try (InputStream in = ExpectedValues.class.getResourceAsStream("/checks/" + folder + "/expected.json")) {
            return new ExpectedValues(new ObjectMapper().readTree(in).get("checks"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Compares a single number. */
    public void scalar(String key, double actual) {
        JsonNode check = check(key);
        same(key, check.get("value").asDouble(), actual, check);
    }

    /** Compares a vector, computing each entry from its label. */
    public void vector(String key, ToDoubleFunction<String> actual) {
        JsonNode check = check(key);
        entries(check).forEach((label, value) -> same(key + " " + label, value, actual.applyAsDouble(label), check));
    }

    public boolean has(String key) {
        for (JsonNode check : checks) {
            if (check.get("key").asText().equals(key)) {
                return true;
            }
        }
        return false;
    }

    private JsonNode check(String key) {
        for (JsonNode check : checks) {
            if (check.get("key").asText().equals(key)) {
                return check;
            }
        }
        throw new AssertionError("No check value " + key);
    }

    private static Map<String, Double> entries(JsonNode check) {
        Map<String, Double> entries = new LinkedHashMap<>();
        for (int i = 0; i < check.get("labels").size(); i++) {
            entries.put(
                    check.get("labels").get(i).asText(),
                    check.get("value").get(i).asDouble());
        }
        return entries;
    }

    private static void same(String what, double expected, double actual, JsonNode check) {
        double tolerance = check.get("tol").asDouble();
        double allowed = check.get("tolKind").asText().equals("rel")
                ? tolerance * Math.abs(expected)
                : tolerance + 1e-13 * Math.max(1, Math.abs(expected));
        assertEquals(expected, actual, allowed, what);
    }
}
