package pippinry.nursery.internal.work;

import java.util.OptionalDouble;

/**
 * How long or how cold, as the trade has it.
 *
 * @param low the least that is usual, empty if none is given
 * @param high the most that is usual
 * @param basis looked up, from memory, or common practice
 * @param source where it is read, or that it has no source
 */
public record Term(OptionalDouble low, double typical, OptionalDouble high, String unit, String basis, String source) {

    public long days() {
        return Math.round(typical);
    }

    /** The last day on which the work still helps, counted like {@link #days}. */
    public long latest() {
        return Math.round(high.orElse(typical));
    }
}
