package pippinry.crossing.internal.rank;

/**
 * Flowers to work for the seedlings wanted.
 *
 * @param median enough with even chances
 * @param low enough only in one of ten cases
 * @param high enough in nine of ten
 */
public record Flowers(int median, int low, int high) {}
