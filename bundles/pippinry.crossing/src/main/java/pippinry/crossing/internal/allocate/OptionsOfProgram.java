package pippinry.crossing.internal.allocate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import pippinry.crossing.internal.quantity.CrossQuantity;
import pippinry.crossing.internal.rank.RankedPair;
import pippinry.crossing.internal.rates.RateBook;
import pippinry.model.record.Genotype;
import pippinry.model.value.Code;
import pippinry.statistics.proportions.BetaBelief;
import pippinry.statistics.proportions.Cascade;

/**
 * Turns judged pairs into options for a plan.
 *
 * <p>A seedling passes with the pair's share of all musts that can be told, less what inbreeding and doubtful pollen take. Its worth
 * is the weighted mean of the wishes in standard deviations; wishes are taken as independent. Where nothing is known of any wish
 * all crosses are alike in it: mean 0, spread 1.
 */
public final class OptionsOfProgram {

    private static final int FAMILY = 50;

    private final RateBook rates;
    private final boolean triploidRates;
    private final double sure;
    private final Map<String, Cascade> funnels = new HashMap<>();
    private final Map<String, Double> each = new HashMap<>();

    /**
     * Reads the house rates.
     *
     * @param sure how sure to be that the flowers give the seedlings
     */
    public OptionsOfProgram(RateBook rates, double sure) {
        this.rates = rates;
        this.triploidRates = rates.triploidSet().isPresent();
        this.sure = sure;
    }

    /** Options in the order of the pairs; pairs whose flowers cannot be reckoned are left out. */
    public List<CrossOption> of(List<RankedPair> pairs, double moreFlowers) {
        List<CrossOption> options = new ArrayList<>();
        for (RankedPair pair : pairs) {
            double flowers = flowersEach(pair.seedParent(), triploid(pair)) * moreFlowers;
            if (!Double.isNaN(flowers)) {
                options.add(option(pair, flowers));
            }
        }
        return options;
    }

    /** Flowers for so many seedlings; empty beyond a million. */
    public OptionalInt flowers(RankedPair pair, int seedlings) {
        return funnel(pair.seedParent(), triploid(pair)).startsNeeded(seedlings, sure);
    }

    private static CrossOption option(RankedPair pair, double flowers) {
        double pass = pair.share().orElse(1)
                * pair.factors().getOrDefault("vigour", 1.0)
                * pair.factors().getOrDefault("pollen", 1.0);
        double[] worth = worth(pair.quantities());
        return new CrossOption(
                pair.seedParent(),
                pair.pollenParent(),
                pass,
                worth[0],
                worth[1],
                worth[2],
                flowers,
                pair.relationship().orElse(0));
    }

    /** Mean, doubt and spread of the wishes taken together. */
    private static double[] worth(List<CrossQuantity> quantities) {
        double weights = 0;
        double mean = 0;
        double doubt = 0;
        double spread = 0;
        for (CrossQuantity quantity : quantities) {
            if (quantity.share().isEmpty()) {
                double weight = quantity.goal().weight().orElse(1);
                double inUnits = quantity.spread() / quantity.outlook().spread();
                weights += weight;
                mean += weight * quantity.lead();
                doubt += Math.pow(weight * quantity.outlook().doubt() * inUnits, 2);
                spread += Math.pow(weight * quantity.spread(), 2);
            }
        }
        return weights == 0
                ? new double[] {0, 0, 1}
                : new double[] {mean / weights, Math.sqrt(doubt) / weights, Math.sqrt(spread) / weights};
    }

    private static boolean triploid(RankedPair pair) {
        return pair.factors().getOrDefault("ploidy", 1.0) < 1;
    }

    private double flowersEach(Code<Genotype> seedParent, boolean triploid) {
        return each.computeIfAbsent(seedParent + "|" + triploid, any -> {
            OptionalInt flowers = funnel(seedParent, triploid).startsNeeded(FAMILY, sure);
            return flowers.isPresent() ? (double) flowers.getAsInt() / FAMILY : Double.NaN;
        });
    }

    private Cascade funnel(Code<Genotype> seedParent, boolean triploid) {
        return funnels.computeIfAbsent(seedParent + "|" + triploid, any -> {
            Optional<BetaBelief> set = triploid && triploidRates ? rates.triploidSet() : Optional.empty();
            return set.isPresent() ? rates.funnel(set, seedParent.text()) : rates.funnel(seedParent.text());
        });
    }
}
