package pippinry.labels.internal.score;

import pippinry.labels.internal.tag.Tag;

/**
 * One line of a sheet.
 *
 * @param place where on the walk it is, such as a place in the row; may be empty
 * @param tag number, check, and a word on who it is
 */
public record ScoreRow(String place, Tag tag) {}
