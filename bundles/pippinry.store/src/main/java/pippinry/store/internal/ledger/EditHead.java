package pippinry.store.internal.ledger;

import java.time.Instant;
import java.util.OptionalLong;

/**
 * What the ledger says of an edit besides its changes.
 *
 * @param number from 1, without gaps
 * @param records how many records it put in or took out
 * @param takesBack the edit that this one reverses, if it does
 */
public record EditHead(long number, Instant time, String author, String reason, int records, OptionalLong takesBack) {}
