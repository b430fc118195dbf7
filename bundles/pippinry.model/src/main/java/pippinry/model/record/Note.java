package pippinry.model.record;

import java.util.Optional;
import pippinry.model.value.PartialDate;
import pippinry.model.value.Subject;

/** A remark about a record. */
public record Note(@Needed Subject subject, Optional<PartialDate> date, String text) {}
