package pippinry.season.internal.walk;

import java.util.Comparator;

/**
 * A place on the ground as it lies on the way.
 *
 * @param blockOrder of the block on file
 */
record Spot(int blockOrder, String block, String row, String place) {

    /** Block by block, row by row, place by place; numbers by their value, so that 10 comes after 9. */
    static final Comparator<Spot> ALONG_THE_ROWS = Comparator.comparingInt(Spot::blockOrder)
            .thenComparing(Spot::row, Spot::byNumber)
            .thenComparing(Spot::place, Spot::byNumber);

    String words() {
        return block + " row " + row + " place " + place;
    }

    boolean isInRowOf(Spot other) {
        return blockOrder == other.blockOrder && row.equals(other.row);
    }

    private static int byNumber(String one, String other) {
        boolean numbers = one.matches("\\d{1,9}") && other.matches("\\d{1,9}");
        return numbers ? Integer.compare(Integer.parseInt(one), Integer.parseInt(other)) : one.compareTo(other);
    }
}
