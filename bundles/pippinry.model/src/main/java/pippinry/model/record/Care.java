package pippinry.model.record;

import java.util.OptionalDouble;
import pippinry.model.value.PartialDate;

/** What was done for plants and ground: spray, thinning, watering, pruning, netting, with hours. A sprayed block proves nothing about resistance. */
public record Care(
        @Needed PartialDate date,
        String where,
        String what,
        String product,
        String dose,
        OptionalDouble hours,
        OptionalDouble cost,
        String note) {

    public Care {
        Checks.range("hours", hours, 0, 100_000);
    }
}
