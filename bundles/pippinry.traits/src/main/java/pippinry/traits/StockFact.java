package pippinry.traits;

import java.util.OptionalDouble;

/** A figure about a rootstock, a form of tree or nursery work, as printed in one source; sources may differ. */
public record StockFact(
        String subject,
        String quantity,
        OptionalDouble low,
        OptionalDouble high,
        String unit,
        String asPrinted,
        Provenance provenance) {}
