package pippinry.store.internal.kept;

/** Gives the blocks of a table. */
interface BlockSource {

    /** Null if there is nothing in the block. */
    byte[] block(int number);
}
