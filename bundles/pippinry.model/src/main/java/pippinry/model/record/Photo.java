package pippinry.model.record;

import java.util.Optional;
import pippinry.model.value.PartialDate;
import pippinry.model.value.Subject;

/**
 * A picture of a record.
 *
 * @param file a path within the folder {@code photos} of the program, parted by slashes
 */
public record Photo(@Needed Subject subject, Optional<PartialDate> date, String file) {

    public Photo {
        Checks.within("file", file);
    }
}
