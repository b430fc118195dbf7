package pippinry.labels.internal.wanted;

import java.util.Optional;
import pippinry.model.ask.HouseRates;
import pippinry.model.record.Cross;
import pippinry.model.record.Genotype;
import pippinry.model.value.Code;

/**
 * How many branches to tag for a planned cross: the seedlings wanted, divided by the rates from flower to pot, are flowers,
 * and so many flowers stand on a branch. One branch where no rates or no number wanted are known.
 */
final class BranchesNeeded {
    /** More tags than that for one cross are printed by hand-counted wish only (our own judgement). */
    private static final int MOST = 60;

    private final Wish wish;

    BranchesNeeded(Wish wish) {
        this.wish = wish;
    }

    int of(Cross cross) {
        if (wish.rates().isEmpty() || cross.seedlingsWanted().isEmpty()) {
            return 1;
        }
        double potted = seedlingsOfAFlower(wish.rates().get(), cross.seedParent());
        double flowers = cross.seedlingsWanted().getAsInt() / potted;
        double branches = Math.ceil(flowers / wish.flowersPerTag());
        return (int) Math.max(1, Math.min(MOST, branches));
    }

    private double seedlingsOfAFlower(HouseRates rates, Optional<Code<Genotype>> seedParent) {
        double seedlings = 1;
        for (HouseRates.Step step : new HouseRates.Step[] {
            HouseRates.Step.SET, HouseRates.Step.SEEDS_PER_FRUIT, HouseRates.Step.EMERGENCE, HouseRates.Step.POTTING
        }) {
            seedlings *= rates.rate(wish.program(), step, seedParent).value().middle();
        }
        return seedlings;
    }
}
