package pippinry.crossing.internal.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pippinry.model.Program;
import pippinry.model.ask.HouseRate;
import pippinry.model.ask.HouseRates;
import pippinry.model.ask.HouseRates.Step;
import pippinry.model.ask.Interval;
import pippinry.model.value.Code;

class FunnelTest {

    private static final Map<Step, Double> RATES =
            Map.of(Step.SET, 0.56, Step.SEEDS_PER_FRUIT, 7.1, Step.EMERGENCE, 0.8, Step.POTTING, 0.9, Step.FIELD, 0.5);

    private static final HouseRates FIXED = (program, step, seedParent) -> {
        double rate = RATES.get(step);
        return new HouseRate(new Interval(rate, rate, rate, 0.8), "counted here");
    };

    /** Rates and result of formulae.md, section 3, of the genetics reference: 16.42, so 17 flowers for 47 seedlings. */
    @Test
    void ratesAreMultipliedStepByStep() {
        Funnel funnel = Funnel.of(Program.empty(), FIXED, Code.of("FIE"), 17, Optional.of(0.25));
        List<String> names = funnel.stages().stream().map(Funnel.Stage::name).toList();
        assertEquals(List.of("flowers", "fruit", "seeds", "up", "potted", "in the field", "every must"), names);
        double potted = funnel.stages().get(4).count();
        assertEquals(47 / 16.42 * 17, potted, 0.02);
        assertEquals(potted * 0.5 * 0.25, funnel.stages().get(6).count(), 1e-9);
    }

    @Test
    void everyRateSaysWhereItComesFrom() {
        Funnel funnel = Funnel.of(Program.empty(), FIXED, Code.of("FIE"), 17, Optional.empty());
        assertEquals(5, funnel.grounds().size());
        assertTrue(funnel.grounds().stream().allMatch(ground -> ground.endsWith("counted here")));
        assertEquals(6, funnel.stages().size());
    }
}
