package pippinry.pedigree.internal.parentage;

/**
 * What was read of everybody at one locus, and how it is inherited. Individuals are numbered; {@link #ANYBODY} stands for a
 * parent of whom nothing is known, one of the population. All chances are of the child's reading, taken as right.
 */
interface Marker {
    int ANYBODY = -1;

    /** The locus, as it is called in words. */
    String name();

    /** Whether anything was read. */
    boolean read(int who);

    /** How often a reading is wrong, from 0 to 1. */
    double errorRate();

    /** The child's reading, given those of its parents, each of which may be {@link #ANYBODY}. */
    double fromParents(int child, int seedParent, int pollenParent);

    /** The child's reading when the seed parent gave the pollen too, by a slip of its self-incompatibility. */
    double fromSelfing(int child, int parent);

    /** The child's reading as that of somebody of the population. */
    double inPopulation(int child);
}
