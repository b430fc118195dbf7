package pippinry.traits;

import java.util.OptionalDouble;

/**
 * Two loci on one chromosome.
 *
 * @param centimorgans map distance; empty when it is not known, and then plans must not count on either
 * @param kind in words
 */
public record Linkage(
        String one,
        String other,
        String chromosome,
        OptionalDouble centimorgans,
        String kind,
        Provenance provenance,
        String note) {}
