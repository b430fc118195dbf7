package pippinry.model;

import java.time.Instant;
import java.util.OptionalLong;

/**
 * One edit as the history tells it.
 *
 * @param number of the edit, from 1
 * @param author initials of the hand
 * @param reason a few words
 * @param records how many records it put in or took out
 * @param takesBack the edit that this one takes back, if it does
 * @param takenBackBy the edit that took this one back, if one did and stands
 */
public record HistoryLine(
        long number,
        Instant time,
        String author,
        String reason,
        int records,
        OptionalLong takesBack,
        OptionalLong takenBackBy) {}
