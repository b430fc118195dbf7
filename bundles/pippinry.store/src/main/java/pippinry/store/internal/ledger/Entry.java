package pippinry.store.internal.ledger;

/**
 * An edit and where it stands in the ledger.
 *
 * @param segment number of the file, from 1
 * @param offset of its first byte in the file
 * @param sum of its last line, which stands for the whole ledger up to there
 */
public record Entry(EditHead head, int segment, long offset, int sum) {}
