package pippinry.store.internal.ledger;

/**
 * Where a ledger stops being good.
 *
 * @param segment number of the file
 * @param line in the file, from 1; 0 if the file is missing
 * @param offset in the file up to which it is good; an edit that was begun before and not committed is not
 * @param edit that the line would be, or be part of
 * @param torn whether it is the unfinished end of the last write and no edit that was ever confirmed
 */
record Flaw(int segment, int line, long offset, long edit, boolean torn) {}
