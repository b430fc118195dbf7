package pippinry.statistics.proportions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

class NestedRatesTest {

    private static final BetaBelief PRIOR = new PublishedRange(0.0667, 0.5667, 0.8333, 9).prior();

    @Test
    void withoutCountsThePublishedRateStands() {
        BetaBelief next = new NestedRates(PRIOR, Map.of()).next();
        assertEquals(PRIOR.mean(), next.mean(), 0.01);
        assertEquals(Math.sqrt(PRIOR.variance()), Math.sqrt(next.variance()), 0.06);
    }

    @Test
    void manyCountsOutweighThePrior() {
        NestedRates rates = new NestedRates(
                PRIOR, Map.of("FIE", List.of(new Count(200, 1000), new Count(210, 1000), new Count(190, 1000))));
        assertEquals(0.2, rates.next("FIE").mean(), 0.02);
        assertEquals(new Count(600, 3000), rates.total("FIE").orElseThrow());
    }

    @Test
    void fewCountsAreDrawnTowardsTheOthers() {
        Map<String, List<Count>> counts = new LinkedHashMap<>();
        for (int i = 0; i < 8; i++) {
            counts.put("P" + i, List.of(new Count(30, 100), new Count(29, 100)));
        }
        counts.put("new", List.of(new Count(4, 5)));
        NestedRates rates = new NestedRates(PRIOR, counts);
        double raw = 0.8;
        double general = rates.next().mean();
        double drawn = rates.next("new").mean();
        assertTrue(general < drawn && drawn < raw, general + " < " + drawn + " < " + raw);
        assertTrue(drawn < 0.45, "five flowers do not outweigh eight equal parents: " + drawn);
    }

    @Test
    void yearsThatDifferLeaveMoreDoubtThanYearsThatAgree() {
        NestedRates even = new NestedRates(
                PRIOR, Map.of("x", List.of(new Count(30, 100), new Count(30, 100), new Count(30, 100))));
        NestedRates uneven =
                new NestedRates(PRIOR, Map.of("x", List.of(new Count(5, 100), new Count(30, 100), new Count(55, 100))));
        assertTrue(uneven.next("x").variance() > 2 * even.next("x").variance());
    }

    @Test
    void ratesOfMadeUpParentsAreFoundAgain() {
        Random dice = new Random(11);
        Map<String, List<Count>> counts = new LinkedHashMap<>();
        Map<String, Double> truth = new LinkedHashMap<>();
        for (int parent = 0; parent < 20; parent++) {
            double rate = new BetaBelief(0.35 * 20, 0.65 * 20).quantile(dice.nextDouble());
            List<Count> years = new ArrayList<>();
            for (int year = 0; year < 4; year++) {
                double batch = new BetaBelief(rate * 40, (1 - rate) * 40).quantile(dice.nextDouble());
                int set = 0;
                for (int flower = 0; flower < 60; flower++) {
                    set += dice.nextDouble() < batch ? 1 : 0;
                }
                years.add(new Count(set, 60));
            }
            truth.put("p" + parent, rate);
            counts.put("p" + parent, years);
        }
        NestedRates rates = new NestedRates(PRIOR, counts);
        int inside = 0;
        for (Map.Entry<String, Double> parent : truth.entrySet()) {
            inside += rates.next(parent.getKey()).central(0.95).holds(parent.getValue()) ? 1 : 0;
        }
        assertTrue(inside >= 18, inside + " of 20 true rates lie in the 95 % interval of their next batch");
        assertEquals(0.35, rates.next().mean(), 0.05);
    }
}
