package pippinry.lineage.internal.chart;

import java.util.List;
import java.util.Optional;
import pippinry.lineage.internal.kin.Bond;
import pippinry.lineage.internal.kin.Bond.Side;
import pippinry.lineage.internal.kin.Doubt;
import pippinry.model.Program;
import pippinry.model.ask.Descent;
import pippinry.model.ask.ParentChance;
import pippinry.model.record.Genotype;

/**
 * How sure links are when what was read of child and parents is weighed. Without the module that weighs it, only what was
 * written down beside each link counts.
 */
public final class Certain {

    private final Program program;
    private final Optional<Descent> descent;

    public Certain(Program program, Optional<Descent> descent) {
        this.program = program;
        this.descent = descent;
    }

    List<Bond> of(Genotype child, List<Bond> written) {
        boolean nobody = written.stream().noneMatch(bond -> bond.side() == Side.POLLEN);
        if (descent.isEmpty() || nobody) {
            return written;
        }
        List<ParentChance> chances = descent.get().pollenParents(program, child.code());
        return written.stream().map(bond -> weighed(bond, chances)).toList();
    }

    private static Bond weighed(Bond bond, List<ParentChance> chances) {
        return chances.stream()
                .filter(chance -> bond.side() == Side.POLLEN
                        && chance.parent()
                                .filter(code -> code.text().equals(bond.parent()))
                                .isPresent())
                .findFirst()
                .map(chance -> new Bond(
                        bond.parent(),
                        bond.side(),
                        chance.possible() ? bond.doubt() : Doubt.IMPOSSIBLE,
                        chance.chance()))
                .orElse(bond);
    }

    List<String> doubts(Genotype genotype) {
        return descent.map(known -> known.doubts(program, genotype.code())).orElse(List.of());
    }
}
