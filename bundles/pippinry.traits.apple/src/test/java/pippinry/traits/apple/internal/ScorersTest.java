package pippinry.traits.apple.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ScorersTest {

    // harvest-methods.csv of the practice reference: 13.0 / 0.429 = 30.3.
    @Test
    void sugarAcidRatioAgreesWithTheWorkedExample() {
        SugarAcidRatio ratio = new SugarAcidRatio();
        assertEquals(
                30.3,
                ratio.score(Map.of("juice.ssc_brix", 13.0, "juice.ta_gl", 4.29)).orElseThrow(),
                0.05);
        assertEquals(OptionalDouble.empty(), ratio.score(Map.of("juice.ssc_brix", 13.0)));
        assertEquals(OptionalDouble.empty(), ratio.score(Map.of("juice.ssc_brix", 13.0, "juice.ta_gl", 0.0)));
    }

    // harvest-methods.csv: 7.5 kgf, 12.0, 5 gives 0.125; the same fruit in N gives 1.226.
    @Test
    void streifIndexAgreesWithTheWorkedExample() {
        Map<String, Double> fruit =
                Map.of("flesh.firmness_n", 7.5 * 9.80665, "juice.ssc_brix", 12.0, "fruit.starch_1_10", 5.0);
        assertEquals(1.226, new StreifIndex().score(fruit).orElseThrow(), 5e-4);
        assertEquals(OptionalDouble.empty(), new StreifIndex().score(Map.of()));
    }
}
