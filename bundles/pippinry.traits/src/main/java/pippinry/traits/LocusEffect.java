package pippinry.traits;

import java.util.OptionalDouble;

/**
 * What a locus does to a trait that is scored.
 *
 * @param decides true when the phenotype at the locus settles the trait's class, false when it only helps
 * @param shownLow values of plants that show the effect; empty when not told by a number
 * @param otherwiseLow values of plants that do not; empty when other genes and the year decide
 */
public record LocusEffect(
        String locus,
        String trait,
        boolean decides,
        OptionalDouble shownLow,
        OptionalDouble shownHigh,
        OptionalDouble otherwiseLow,
        OptionalDouble otherwiseHigh,
        Provenance provenance,
        String note) {}
