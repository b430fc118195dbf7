package pippinry.model.record;

import java.util.Optional;
import pippinry.model.value.PartialDate;
import pippinry.model.value.Subject;

/** A picture of a record, kept in the program folder. */
public record Photo(@Needed Subject subject, Optional<PartialDate> date, String file) {}
