package pippinry.traits;

import java.util.OptionalDouble;

/** A limit at which something starts or stops: pollen growth, frost, infection, chill. */
public record Threshold(
        String topic,
        String item,
        OptionalDouble low,
        OptionalDouble high,
        String unit,
        Provenance provenance,
        String note) {}
