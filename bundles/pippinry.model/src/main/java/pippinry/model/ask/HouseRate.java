package pippinry.model.ask;

/**
 * A rate by the program's own counts over the published ones.
 *
 * @param value a share from 0 to 1, or a mean such as seeds per fruit
 * @param basis where it comes from, in words: own counts, published range and its source
 */
public record HouseRate(Interval value, String basis) {}
