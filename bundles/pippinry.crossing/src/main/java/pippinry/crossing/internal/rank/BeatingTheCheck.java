package pippinry.crossing.internal.rank;

import java.util.Optional;
import java.util.OptionalDouble;
import pippinry.crossing.internal.quantity.TraitModel;
import pippinry.model.Program;
import pippinry.model.record.Genotype;
import pippinry.model.value.Code;
import pippinry.statistics.selection.FamilyOutlook;

/**
 * The chance that at least one of a cross's seedlings is truly better than a check tree by a wished amount. The check's value
 * is its own records, year taken out and drawn in by how few they are.
 */
final class BeatingTheCheck {

    private final Beat beat;
    private final Optional<TraitModel> model;

    BeatingTheCheck(Program program, Beat beat) {
        this.beat = beat;
        this.model = TraitModel.of(program, beat.trait(), 0);
    }

    /** Empty when too little is scored of the trait or nothing of the check. */
    OptionalDouble chance(Code<Genotype> seed, Code<Genotype> pollen, int seedlings) {
        if (model.isEmpty() || model.get().value(beat.check()).isEmpty()) {
            return OptionalDouble.empty();
        }
        FamilyOutlook family = model.get().outlook(seed, pollen, 0);
        double check = model.get().expectedValue(beat.check());
        if (beat.more()) {
            return OptionalDouble.of(family.chanceOfOneAbove(check + beat.by(), seedlings));
        }
        FamilyOutlook turned = new FamilyOutlook(-family.mean(), family.doubt(), family.spread());
        return OptionalDouble.of(turned.chanceOfOneAbove(-(check - beat.by()), seedlings));
    }
}
