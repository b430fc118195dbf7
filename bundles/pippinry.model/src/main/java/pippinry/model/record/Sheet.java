package pippinry.model.record;

import java.util.Optional;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;

/** A printed score or count sheet and its rows in walking order, so that entry follows the paper. */
public record Sheet(
        @Needed Code<Sheet> sheet,
        Optional<PartialDate> date,
        String person,
        String block,
        String traits,
        String subjects,
        String note) {}
