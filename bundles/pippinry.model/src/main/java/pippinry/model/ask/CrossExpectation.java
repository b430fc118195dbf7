package pippinry.model.ask;

import org.osgi.annotation.versioning.ProviderType;
import pippinry.model.Program;
import pippinry.model.record.Genotype;
import pippinry.model.value.Code;
import pippinry.model.value.PollenParent;

/** What share of a cross's seedlings should show a trait. Without it a family has no expectation of its own. */
@ProviderType
public interface CrossExpectation {

    /** Share of the seedlings that reach what the goal for this trait asks, from 0 to 1, with its doubt. */
    Interval share(Program program, Code<Genotype> seedParent, PollenParent<Genotype> pollenParent, String trait);
}
