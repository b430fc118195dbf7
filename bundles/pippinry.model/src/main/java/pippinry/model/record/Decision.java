package pippinry.model.record;

import java.util.Optional;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;

/** What was decided about a genotype, when, by whom and on what grounds. */
public record Decision(
        @Needed Code<Genotype> genotype,
        @Needed Verdict decision,
        Optional<PartialDate> date,
        String person,
        String grounds) {}
