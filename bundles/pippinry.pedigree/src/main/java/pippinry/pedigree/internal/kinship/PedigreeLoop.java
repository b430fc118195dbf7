package pippinry.pedigree.internal.kinship;

/** Somebody is their own ancestor. */
public final class PedigreeLoop extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final int[] members;

    PedigreeLoop(int[] members) {
        super("a pedigree loop of " + members.length);
        this.members = members.clone();
    }

    /** The individuals of the loop: each comes from the next, and the last from the first. */
    public int[] members() {
        return members.clone();
    }
}
