package pippinry.model.record;

import java.util.Optional;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;
import pippinry.model.value.ScoreValue;
import pippinry.model.value.Subject;

/** One observation of a plant, genotype, lot, place or sample. */
public record Score(
        @Needed Subject subject,
        @Needed String trait,
        @Needed ScoreValue value,
        String unit,
        Optional<PartialDate> date,
        String time,
        String part,
        String scorer,
        String instrument,
        Optional<Code<Sample>> sample,
        String sheet,
        String note) {}
