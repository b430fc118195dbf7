package pippinry.lineage.internal.kin;

/**
 * A link from a child up to one of its parents.
 *
 * @param parent code of the parent
 * @param chance that it is this one, from 0 to 1; only for one of several
 */
public record Bond(String parent, Side side, Doubt doubt, double chance) {

    /** By what the parent is one. */
    public enum Side {
        SEED,
        POLLEN,
        SPORT
    }

    Bond withDoubt(Doubt other) {
        return new Bond(parent, side, other, chance);
    }
}
