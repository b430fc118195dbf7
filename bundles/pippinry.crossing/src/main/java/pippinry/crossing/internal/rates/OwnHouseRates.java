package pippinry.crossing.internal.rates;

import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import pippinry.crossing.internal.Packs;
import pippinry.model.Program;
import pippinry.model.ask.HouseRate;
import pippinry.model.ask.HouseRates;
import pippinry.model.ask.Interval;
import pippinry.model.record.Genotype;
import pippinry.model.value.Code;
import pippinry.statistics.proportions.BetaBelief;
import pippinry.traits.CropPack;

/** Offers the house rates to the other modules. */
@Component
public final class OwnHouseRates implements HouseRates {

    private static final double CERTAINTY = 0.8;
    private static final HouseRate NOTHING_KNOWN =
            new HouseRate(new Interval(1, 0, 1, CERTAINTY), "neither published nor counted here: not reckoned with");

    private final Packs packs;
    private volatile Last last;

    @Activate
    public OwnHouseRates(
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<CropPack> packs) {
        this.packs = new Packs(packs);
    }

    @Override
    public HouseRate rate(Program program, Step step, Optional<Code<Genotype>> seedParent) {
        RateBook book = book(program);
        String group = seedParent.map(Code::text).orElse("");
        double scale = step == Step.SEEDS_PER_FRUIT ? book.ovules() : 1;
        return book.belief(step, group)
                .map(belief -> new HouseRate(interval(belief, scale), book.ground(step, group)))
                .orElse(NOTHING_KNOWN);
    }

    private static Interval interval(BetaBelief belief, double scale) {
        double tail = (1 - CERTAINTY) / 2;
        return new Interval(
                scale * belief.quantile(0.5),
                scale * belief.quantile(tail),
                scale * belief.quantile(1 - tail),
                CERTAINTY);
    }

    private RateBook book(Program program) {
        Last known = last;
        if (known == null || known.program() != program) {
            known = new Last(program, new RateBook(program, packs.of(program)));
            last = known;
        }
        return known.book();
    }

    /** The program asked about last; not kept with the program, since crop packs may come and go. */
    private record Last(Program program, RateBook book) {}
}
