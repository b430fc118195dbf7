package pippinry.model.ask;

import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;
import pippinry.model.Program;
import pippinry.model.record.Genotype;
import pippinry.model.value.Code;

/** Rates from flower to tree, by own history blended with published ones. Without it nothing is forecast. */
@ProviderType
public interface HouseRates {

    /** The steps from flower to tree. */
    enum Step {
        SET,
        SEEDS_PER_FRUIT,
        EMERGENCE,
        POTTING,
        TAKE,
        FIELD
    }

    /** @param seedParent narrows it to one seed parent's own counts where there are any */
    HouseRate rate(Program program, Step step, Optional<Code<Genotype>> seedParent);
}
