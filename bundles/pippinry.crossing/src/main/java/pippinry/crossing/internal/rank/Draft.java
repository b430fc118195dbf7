package pippinry.crossing.internal.rank;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import pippinry.crossing.internal.genes.SeedlingShares;
import pippinry.crossing.internal.quantity.CrossQuantity;
import pippinry.model.ask.Interval;
import pippinry.model.record.Genotype;
import pippinry.model.value.Code;
import pippinry.traits.Compatibility;

/**
 * A pair judged, before seedlings and flowers are reckoned.
 *
 * @param toldMusts musts that genes decide and of which something is on file, as bits
 * @param quantities what records promise; musts that genes tell are not among them
 */
record Draft(
        Code<Genotype> seedParent,
        Code<Genotype> pollenParent,
        Compatibility match,
        SeedlingShares shares,
        int toldMusts,
        List<CrossQuantity> quantities,
        Optional<Double> inbreeding,
        Optional<Interval> bloomGap,
        Map<String, Double> factors) {

    /** Share of the seedlings expected to reach every must that records speak to. */
    double shareByRecords() {
        double product = 1;
        for (CrossQuantity quantity : quantities) {
            product *= quantity.share().orElse(1);
        }
        return product;
    }

    /** Whether any must is told, by genes or by records. */
    boolean told() {
        return toldMusts != 0
                || quantities.stream().anyMatch(quantity -> quantity.share().isPresent());
    }

    double worth() {
        double product = 1;
        for (double factor : factors.values()) {
            product *= factor;
        }
        return product;
    }
}
