package pippinry.model.record;

import java.util.Optional;
import pippinry.model.value.PartialDate;
import pippinry.model.value.Subject;

/** Another name of a genotype or plant: an old tag, a nickname, the name it was given with. */
public record FurtherName(
        @Needed Subject subject, @Needed String name, String kind, Optional<PartialDate> from, String note) {}
