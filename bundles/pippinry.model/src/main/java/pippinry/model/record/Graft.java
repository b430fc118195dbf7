package pippinry.model.record;

import java.util.Optional;
import java.util.OptionalDouble;
import pippinry.model.value.Code;
import pippinry.model.value.PartialDate;
import pippinry.model.value.Subject;

/** A graft: whose wood on which stock, by whom and how, and whether it took. */
public record Graft(
        @Needed Code<Plant> plant,
        Optional<PartialDate> date,
        String method,
        String hand,
        String stockLot,
        Optional<Subject> woodFrom,
        OptionalDouble woodHeightM,
        Optional<PartialDate> readOn,
        String result,
        String note) {}
