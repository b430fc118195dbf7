package pippinry.model.record;

import java.util.Optional;
import pippinry.model.value.PartialDate;

/** Something to do for a batch; with a rule it marks what the program itself found due as done or skipped. */
public record Task(
        @Needed String batch,
        Optional<PartialDate> date,
        String text,
        String rule,
        Optional<Outcome> outcome,
        Optional<PartialDate> doneOn,
        String person) {}
