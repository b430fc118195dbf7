package pippinry.crossing.internal.genes;

import pippinry.traits.Dominance;
import pippinry.traits.Locus;

/**
 * One way in which a seedling comes to have what is wanted of a trait: it shows the effect of a locus, or it does not.
 *
 * @param shown whether the effect is wanted or its absence
 */
public record Need(Locus locus, boolean shown) {

    /** Whether a seedling with this many copies of the effect allele has it. */
    public boolean metBy(int copies) {
        boolean shows = locus.dominance() == Dominance.RECESSIVE ? copies >= 2 : copies >= 1;
        return shows == shown;
    }
}
