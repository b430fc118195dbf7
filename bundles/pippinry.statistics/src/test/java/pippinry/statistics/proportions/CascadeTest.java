package pippinry.statistics.proportions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CascadeTest {

    /** Rates nearly known, from formulae.md section 3: set 0.56, 7.1 seeds of 10 ovules, emergence 0.80, survival 0.90. */
    private static final Cascade SURE = new Cascade(List.of(
            new Cascade.Stage("set", nearly(0.56), 10),
            new Cascade.Stage("seed", nearly(0.71), 1),
            new Cascade.Stage("emergence", nearly(0.80), 1),
            new Cascade.Stage("survival", nearly(0.90), 1)));

    private static final Cascade DOUBTFUL = new Cascade(List.of(
            new Cascade.Stage("set", new BetaBelief(2, 2), 5),
            new Cascade.Stage("seed", new BetaBelief(5, 2), 1),
            new Cascade.Stage("emergence", new BetaBelief(6, 2), 1),
            new Cascade.Stage("survival", new BetaBelief(9, 1), 1)));

    @Test
    void theMeanIsTheProductOfTheRates() {
        assertEquals(0.56 * 7.1 * 0.80 * 0.90, SURE.mean(), 1e-9);
    }

    @Test
    void planningTheMeanOnlyFailsAboutEverySecondTime() {
        // formulae.md, section 3: 47 seedlings from 17 flowers "plans the mean only; ask for more to be safe".
        double chance = SURE.atLeast(47, 17);
        assertTrue(chance > 0.4 && chance < 0.65, "chance " + chance);
        int safe = SURE.startsNeeded(47, 0.95).orElseThrow();
        assertTrue(safe > 20, "flowers " + safe);
        assertTrue(SURE.atLeast(47, safe) >= 0.95 && SURE.atLeast(47, safe - 1) < 0.95);
    }

    @Test
    void oneStageIsTheBetaBinomialItself() {
        BetaBelief rate = new BetaBelief(3, 2);
        Cascade one = new Cascade(List.of(new Cascade.Stage("take", rate, 1)));
        assertEquals(1 - rate.fewerThan(6, 10), one.atLeast(6, 10), 1e-14);
        assertEquals(
                TrialsNeeded.atLeast(6, rate, 0.8).orElseThrow(),
                one.startsNeeded(6, 0.8).orElseThrow());
    }

    @Test
    void joiningStagesChangesTheAnswerByLessThanAHundredth() {
        for (int starts : new int[] {1, 2, 4, 8, 16}) {
            for (int least : new int[] {1, 3, 6, 12, 24}) {
                assertEquals(stepByStep(least, starts), DOUBTFUL.atLeast(least, starts), 0.01);
            }
        }
    }

    @Test
    void agreesWithThrowingDice() {
        Random dice = new Random(7);
        int good = 0;
        int rounds = 20_000;
        for (int i = 0; i < rounds; i++) {
            good += thrown(dice, 12) >= 15 ? 1 : 0;
        }
        // Three standard errors of a share of 20,000 and the hundredth of the joined stages.
        assertEquals((double) good / rounds, DOUBTFUL.atLeast(15, 12), 0.011 + 0.01);
    }

    @Test
    void reachedCountFallsAsCertaintyRises() {
        int half = DOUBTFUL.reachedWith(0.5, 20);
        int nearlySure = DOUBTFUL.reachedWith(0.9, 20);
        assertTrue(nearlySure < half, nearlySure + " < " + half);
        assertTrue(DOUBTFUL.atLeast(half, 20) >= 0.5 && DOUBTFUL.atLeast(half + 1, 20) < 0.5);
        assertEquals(DOUBTFUL.stages().get(0).mean(), DOUBTFUL.upTo(0).mean());
    }

    @Test
    void aHopelessRateIsSaidToBeHopeless() {
        Cascade none = new Cascade(List.of(new Cascade.Stage("set", new BetaBelief(1e-3, 1000), 10)));
        assertTrue(none.startsNeeded(50, 0.9).isEmpty());
        assertThrows(IllegalArgumentException.class, () -> none.startsNeeded(0, 0.9));
    }

    private static BetaBelief nearly(double mean) {
        return new BetaBelief(mean * 1e6, (1 - mean) * 1e6);
    }

    /** The same probability with no stage joined to another. */
    private static double stepByStep(int least, int starts) {
        return chance(0, starts, least);
    }

    private static double chance(int stage, int units, int least) {
        if (stage == 4) {
            return units >= least ? 1 : 0;
        }
        Cascade.Stage here = DOUBTFUL.stages().get(stage);
        double sum = 0;
        double[] after = new double[units + 1];
        for (int y = 0; y <= units; y++) {
            after[y] = remember(stage + 1, y * here.copies(), least);
            sum += here.passes().next(y, units) * after[y];
        }
        return sum;
    }

    private static final Map<String, Double> MEMORY = new HashMap<>();

    private static double remember(int stage, int units, int least) {
        String key = stage + "/" + units + "/" + least;
        Double known = MEMORY.get(key);
        if (known == null) {
            known = chance(stage, units, least);
            MEMORY.put(key, known);
        }
        return known;
    }

    private static int thrown(Random dice, int starts) {
        int units = starts;
        for (Cascade.Stage stage : DOUBTFUL.stages()) {
            double rate = stage.passes().quantile(dice.nextDouble());
            int passed = 0;
            for (int i = 0; i < units; i++) {
                passed += dice.nextDouble() < rate ? 1 : 0;
            }
            units = passed * stage.copies();
        }
        return units;
    }
}
