package pippinry.nursery.internal.stools;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pippinry.model.Program;
import pippinry.model.ask.HouseRate;
import pippinry.model.ask.HouseRates;
import pippinry.model.ask.HouseRates.Step;
import pippinry.nursery.internal.copies.OnlyCopy;
import pippinry.nursery.internal.copies.Takes;
import pippinry.nursery.internal.copies.Ungrafted;

/**
 * How many liners next spring's grafts need: the grafts wanted divided by the take. Wanted is one graft of each living potted
 * seedling that has none, and two copies of each kept plant with a single tree.
 *
 * @param take share of grafts that take, own counts where there are any; empty if nothing is known
 */
public record LinersWanted(int seedlings, int copies, OptionalDouble take) {

    private static final int COPIES_EACH = 2;

    /** @param rates empty without a module that knows house rates */
    public static LinersWanted of(Program program, Optional<HouseRates> rates) {
        int copies = (int) OnlyCopy.of(program).count() * COPIES_EACH;
        return new LinersWanted(Ungrafted.of(program).size(), copies, take(program, rates));
    }

    private static OptionalDouble take(Program program, Optional<HouseRates> rates) {
        if (rates.isPresent()) {
            HouseRate rate = rates.get().rate(program, Step.TAKE, Optional.empty());
            return OptionalDouble.of(rate.value().middle());
        }
        List<Takes.Take> stocks = Takes.of(program, Takes.By.STOCK);
        int read = stocks.stream().mapToInt(Takes.Take::read).sum();
        int taken = stocks.stream().mapToInt(Takes.Take::taken).sum();
        return read == 0 || taken == 0 ? OptionalDouble.empty() : OptionalDouble.of((double) taken / read);
    }

    public int grafts() {
        return seedlings + copies;
    }

    /** Empty where no take is known. */
    public OptionalDouble liners() {
        return take.isPresent() && take.getAsDouble() > 0
                ? OptionalDouble.of(Math.ceil(grafts() / take.getAsDouble()))
                : OptionalDouble.empty();
    }
}
