package pippinry.store.internal.ledger;

import java.util.List;

/** The edits of a program in their order. Safe for any thread. */
public interface Edits {

    LedgerFolder folder();

    /** Number of the last edit; 0 before the first. */
    long last();

    /** @param number of an edit that is on file */
    Entry edit(long number);

    /** Edits from the one number to the other, both counted in; none if they stand the other way round. */
    List<Entry> edits(long from, long to);
}
