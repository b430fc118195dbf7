package pippinry.model.ask;

import java.util.List;
import org.osgi.annotation.versioning.ProviderType;
import pippinry.model.Program;
import pippinry.model.record.Genotype;
import pippinry.model.value.Code;

/** How sure it is whose child a genotype is. Without it only what was written down beside each link is known. */
@ProviderType
public interface Descent {

    /** Why its descent is not sure, a sentence each: its own parents first, then what it inherits; empty if all is sure. */
    List<String> doubts(Program program, Code<Genotype> genotype);

    /** Who may have given the pollen, likeliest first, the last perhaps somebody not named; their chances sum to 1. */
    List<ParentChance> pollenParents(Program program, Code<Genotype> genotype);
}
