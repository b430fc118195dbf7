package pippinry.pedigree.internal.kinship;

/** Whom an individual comes from, whatever the kind of link. */
interface Links {
    /** How many links the individual has. */
    int count(int who);

    /** The individual at the far end of one link, or a negative number when nobody is known there. */
    int from(int who, int link);
}
