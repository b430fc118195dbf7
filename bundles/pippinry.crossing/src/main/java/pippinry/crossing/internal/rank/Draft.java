package pippinry.crossing.internal.rank;

import java.util.Map;
import java.util.Optional;
import pippinry.crossing.internal.genes.SeedlingShares;
import pippinry.model.ask.Interval;
import pippinry.model.record.Genotype;
import pippinry.model.value.Code;
import pippinry.traits.Compatibility;

/** A pair judged, before seedlings and flowers are reckoned. */
record Draft(
        Code<Genotype> seedParent,
        Code<Genotype> pollenParent,
        Compatibility match,
        SeedlingShares shares,
        int toldMusts,
        Optional<Double> inbreeding,
        Optional<Interval> bloomGap,
        Map<String, Double> factors) {

    double worth() {
        double product = 1;
        for (double factor : factors.values()) {
            product *= factor;
        }
        return product;
    }
}
