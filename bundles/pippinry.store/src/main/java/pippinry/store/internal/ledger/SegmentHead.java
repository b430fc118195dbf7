package pippinry.store.internal.ledger;

import java.time.Instant;

/**
 * The first line of a file of the ledger.
 *
 * @param format version of the way the lines are written
 * @param segment number of the file, from 1
 * @param program that the ledger is of; the same in all its files
 * @param time when the file was begun
 */
record SegmentHead(int format, int segment, String program, Instant time) {

    static final String LEDGER = "pippinry";

    /** The format that we write, and the newest that we read. */
    static final int FORMAT = 1;
}
