package pippinry.crossing.internal.allocate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import pippinry.model.value.Code;
import pippinry.statistics.selection.NormalOrder;

class AllocatorTest {

    private static final Limits LIMITS = new Limits(200, 10_000, 3, 6, 20, 0.125, 1);

    @Test
    void bestOfOneFamilyIsTheOrderStatistic() {
        // With every seedling passing and far above the floor, the best of 50 is worth mean + 2.249 spreads (Harter
        // 1961).
        CrossOption cross = option("A", "B", 1, 9, 0, 1, 1);
        double worth = WorthOfBest.of(List.of(new Allocation.Part(cross, 50)), 1);
        assertEquals(9 + 2.24907 - WorthOfBest.FLOOR, worth, 1e-3);
        double three = WorthOfBest.of(List.of(new Allocation.Part(cross, 50)), 3);
        assertEquals(3 * (9 - WorthOfBest.FLOOR) + 3 * NormalOrder.meanOfBest(3, 50), three, 2e-3);
    }

    @Test
    void worthAgreesWithThrowingDice() {
        List<Allocation.Part> plan = List.of(
                new Allocation.Part(option("A", "B", 0.3, 0.2, 0.3, 0.8, 1), 40),
                new Allocation.Part(option("A", "C", 0.1, 0.8, 0.1, 0.6, 1), 60));
        Random dice = new Random(4);
        double sum = 0;
        int rounds = 20_000;
        for (int round = 0; round < rounds; round++) {
            List<Double> worths = new ArrayList<>();
            for (Allocation.Part part : plan) {
                CrossOption cross = part.cross();
                double mean = cross.mean() + cross.doubt() * dice.nextGaussian();
                for (int i = 0; i < part.seedlings(); i++) {
                    double worth = mean + cross.spread() * dice.nextGaussian();
                    if (dice.nextDouble() < cross.pass() && worth > WorthOfBest.FLOOR) {
                        worths.add(worth - WorthOfBest.FLOOR);
                    }
                }
            }
            sum += worths.stream()
                    .sorted((x, y) -> Double.compare(y, x))
                    .limit(3)
                    .mapToDouble(w -> w)
                    .sum();
        }
        // Standard error about 0.01; the doubt is summed at three points.
        assertEquals(sum / rounds, WorthOfBest.of(plan, 3), 0.05);
    }

    @Test
    void aBetterCrossGetsTheGroundAndTheBoundHolds() {
        List<CrossOption> options = List.of(
                option("A", "B", 0.5, 1, 0.2, 1, 2),
                option("A", "C", 0.5, 0, 0.2, 1, 2),
                option("B", "C", 0.1, 1, 0.2, 1, 2));
        Allocation plan = new Allocator(options, LIMITS).plans().get(0);
        assertEquals(1, plan.shares().size());
        assertEquals("A", plan.shares().get(0).cross().seedParent().text());
        assertEquals(200, plan.seedlings());
        assertTrue(plan.worth() <= plan.bound() + 1e-9, plan.worth() + " <= " + plan.bound());
        assertTrue(plan.gap() < 0.06, "gap " + plan.gap());
    }

    @Test
    void fewFlowersGoToTheCrossThatSetsWell() {
        List<CrossOption> options =
                List.of(option("A", "B", 0.5, 0.3, 0.2, 1, 20), option("C", "D", 0.5, 0.2, 0.2, 1, 1));
        Limits scarce = new Limits(200, 150, 3, 6, 20, 0.125, 1);
        Allocation plan = new Allocator(options, scarce).plans().get(0);
        assertEquals("C", plan.shares().get(0).cross().seedParent().text());
        assertTrue(plan.flowers() <= 150 + 1e-6);
    }

    @Test
    void relationshipParentsAndFamiliesKeepTheirLimits() {
        List<CrossOption> options = new ArrayList<>();
        for (String pollen : List.of("B", "C", "D", "E")) {
            options.add(option("A", pollen, 0.5, 1, 0.2, 1, 1));
        }
        options.add(option("F", "G", 0.5, 0.4, 0.2, 1, 1));
        options.add(option("H", "I", 0.5, 0.3, 0.2, 1, 1));
        options.add(new CrossOption(Code.of("K"), Code.of("L"), 1, 3, 0, 1, 1, 0.25));
        Allocation plan = new Allocator(options, new Limits(200, 10_000, 3, 4, 30, 0.125, 0.5))
                .plans()
                .get(0);
        assertTrue(plan.shares().stream()
                .noneMatch(part -> part.cross().seedParent().text().equals("K")));
        int ofA = plan.shares().stream()
                .filter(part -> part.cross().seedParent().text().equals("A"))
                .mapToInt(Allocation.Part::seedlings)
                .sum();
        assertTrue(ofA <= 0.5 * plan.seedlings() + 1e-9, ofA + " of " + plan.seedlings());
        assertTrue(plan.shares().size() <= 4);
        assertTrue(plan.shares().stream().allMatch(part -> part.seedlings() >= 30));
    }

    @Test
    void thePlanAgreesWithGoingThroughEverySplit() {
        List<CrossOption> options =
                List.of(option("A", "B", 0.2, 0.6, 0.3, 0.5, 1), option("C", "D", 0.25, 0.2, 0.3, 1, 1));
        Allocation plan = new Allocator(options, new Limits(60, 10_000, 2, 2, 5, 1, 1))
                .plans()
                .get(0);
        double best = 0;
        for (int n = 0; n <= 60; n++) {
            int[] split = {n, 60 - n};
            if (Arrays.stream(split).allMatch(k -> k == 0 || k >= 5)) {
                List<Allocation.Part> parts = new ArrayList<>();
                for (int i = 0; i < 2; i++) {
                    if (split[i] > 0) {
                        parts.add(new Allocation.Part(options.get(i), split[i]));
                    }
                }
                best = Math.max(best, WorthOfBest.of(parts, 2));
            }
        }
        assertTrue(plan.worth() > 0.98 * best, plan.worth() + " of " + best);
        assertTrue(best <= plan.bound() + 1e-9);
    }

    @Test
    void theSecondBestPlanIsDifferentAndWorthLess() {
        List<CrossOption> options = List.of(
                option("A", "B", 0.5, 1, 0.2, 1, 2),
                option("A", "C", 0.5, 0.5, 0.2, 1, 2),
                option("B", "C", 0.4, 0.2, 0.2, 1, 2));
        Allocator allocator = new Allocator(options, LIMITS);
        Allocation best = allocator.plans().get(0);
        Allocation other = allocator.plans().get(1);
        assertTrue(other.worth() <= best.worth() + 1e-9);
        assertTrue(!other.shares().stream()
                .map(Allocation.Part::cross)
                .toList()
                .equals(best.shares().stream().map(Allocation.Part::cross).toList()));
    }

    @Test
    void whereNothingKeepsTheLimitsThereIsNoPlan() {
        assertEquals(List.of(), new Allocator(List.of(), LIMITS).plans());
        assertEquals(
                List.of(),
                new Allocator(List.of(new CrossOption(Code.of("A"), Code.of("B"), 1, 0, 0, 1, 1, 0.5)), LIMITS)
                        .plans());
        assertEquals(
                List.of(),
                new Allocator(List.of(option("A", "B", 1, 0, 0, 1, 100)), new Limits(200, 150, 3, 6, 20, 1, 1))
                        .plans());
    }

    private static CrossOption option(
            String seed, String pollen, double pass, double mean, double doubt, double spread, double flowers) {
        return new CrossOption(Code.of(seed), Code.of(pollen), pass, mean, doubt, spread, flowers, 0);
    }
}
