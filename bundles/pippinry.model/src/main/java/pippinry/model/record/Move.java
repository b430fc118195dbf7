package pippinry.model.record;

import java.util.Optional;
import pippinry.model.value.PartialDate;
import pippinry.model.value.Subject;

/** Wood, pollen, seed or trees in or out. */
public record Move(
        @Needed PartialDate date,
        Optional<Subject> subject,
        String what,
        String direction,
        String person,
        String amount,
        Optional<YesNo> mayPassOn,
        @Named("protected") Optional<YesNo> protectedRight,
        String healthTest,
        String note) {}
