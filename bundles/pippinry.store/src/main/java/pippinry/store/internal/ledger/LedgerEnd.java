package pippinry.store.internal.ledger;

import java.util.List;

/**
 * How far a ledger reaches.
 *
 * @param segment the last file
 * @param length of the last file
 * @param sumsBefore for each file the sum at the end of the one before
 */
public record LedgerEnd(int segment, long length, List<Integer> sumsBefore) {}
