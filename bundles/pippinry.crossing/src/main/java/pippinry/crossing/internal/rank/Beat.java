package pippinry.crossing.internal.rank;

import pippinry.model.record.Genotype;
import pippinry.model.value.Code;

/**
 * A check that at least one seedling should beat.
 *
 * @param more whether more of the trait is better
 * @param by how much better, in the unit of the trait, 0 or more
 */
public record Beat(String trait, Code<Genotype> check, boolean more, double by) {
    public Beat {
        if (!(by >= 0)) {
            throw new IllegalArgumentException("An amount of 0 or more, not " + by);
        }
    }
}
