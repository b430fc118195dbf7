package pippinry.nursery.internal.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import pippinry.model.ask.HouseRate;
import pippinry.model.ask.HouseRates;
import pippinry.model.ask.HouseRates.Step;
import pippinry.model.record.Cross;
import pippinry.nursery.internal.work.Look;

/** About how many flowers a cross needs: seedlings wanted divided by the middle house rates on the way to the pot. */
final class FlowersNeeded {

    private static final List<Step> WAY = List.of(Step.SET, Step.SEEDS_PER_FRUIT, Step.EMERGENCE, Step.POTTING);
    private static final int ROUND_TO = 10;

    private FlowersNeeded() {}

    /** In words; says what is missing where nothing can be reckoned. */
    static String words(Look look, Cross cross) {
        if (cross.seedlingsWanted().isEmpty()) {
            return "how many seedlings are wanted is not on file";
        }
        String wanted = cross.seedlingsWanted().getAsInt() + " seedlings wanted";
        return look.rates()
                .flatMap(rates -> flowers(look, rates, cross))
                .map(flowers -> "about " + flowers + " flowers for the " + wanted)
                .orElse(wanted);
    }

    private static Optional<Long> flowers(Look look, HouseRates rates, Cross cross) {
        double seedlingsPerFlower = WAY.stream()
                .map(step -> rates.rate(look.program(), step, cross.seedParent()))
                .map(HouseRate::value)
                .collect(Collectors.reducing(1.0, rate -> rate.middle(), (one, other) -> one * other));
        return seedlingsPerFlower > 0
                ? Optional.of(roundUp(cross.seedlingsWanted().getAsInt() / seedlingsPerFlower))
                : Optional.empty();
    }

    private static long roundUp(double flowers) {
        return (long) Math.ceil(flowers / ROUND_TO) * ROUND_TO;
    }
}
