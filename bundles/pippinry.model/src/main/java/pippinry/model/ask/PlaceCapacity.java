package pippinry.model.ask;

import org.osgi.annotation.versioning.ProviderType;
import pippinry.model.Program;

/** How much ground there will be. Without it a plan of crosses does not know whether there is room. */
@ProviderType
public interface PlaceCapacity {

    /** Places expected to be free for new seedlings at the end of that year. */
    Interval free(Program program, int year);
}
