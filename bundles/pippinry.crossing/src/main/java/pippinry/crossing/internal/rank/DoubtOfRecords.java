package pippinry.crossing.internal.rank;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pippinry.crossing.internal.quantity.CrossQuantity;

/**
 * The share of seedlings that reaches the musts told by records, as it would be if the family's means were a little lower or
 * higher than predicted.
 *
 * <p>Each mean is set at its prediction and at root three deviations either side with weights 2/3, 1/6 and 1/6 (three-point
 * Gauss-Hermite rule), independently for each must.
 */
final class DoubtOfRecords {

    private static final double[] PLACES = {-Math.sqrt(3), 0, Math.sqrt(3)};
    private static final double[] WEIGHTS = {1.0 / 6, 2.0 / 3, 1.0 / 6};

    private DoubtOfRecords() {}

    /** Share to its weight; one entry of 1 where no must is told by records. */
    static Map<Double, Double> shares(List<CrossQuantity> quantities) {
        Map<Double, Double> shares = new TreeMap<>(Map.of(1.0, 1.0));
        for (CrossQuantity quantity : quantities) {
            if (quantity.share().isPresent()) {
                shares = times(shares, quantity);
            }
        }
        return shares;
    }

    private static Map<Double, Double> times(Map<Double, Double> shares, CrossQuantity quantity) {
        Map<Double, Double> product = new TreeMap<>();
        for (int i = 0; i < PLACES.length; i++) {
            double reach = quantity.shareIfMeanIs(PLACES[i]);
            double weight = WEIGHTS[i];
            shares.forEach((share, chance) -> product.merge(share * reach, chance * weight, Double::sum));
        }
        return product;
    }
}
