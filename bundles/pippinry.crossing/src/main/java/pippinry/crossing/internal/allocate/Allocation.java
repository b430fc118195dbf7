package pippinry.crossing.internal.allocate;

import java.util.List;

/**
 * A plan of crosses.
 *
 * @param shares crosses to make, largest family first
 * @param worth expected sum, over the best seedlings, of their worth above the floor
 * @param bound that no plan within the limits can exceed
 */
public record Allocation(List<Part> shares, double worth, double bound) {

    /**
     * One cross of the plan.
     *
     * @param seedlings to raise
     */
    public record Part(CrossOption cross, int seedlings) {}

    public Allocation {
        shares = List.copyOf(shares);
    }

    /** How much better than this plan another could be at the very most, as a share of the bound. */
    public double gap() {
        return bound <= 0 ? 0 : Math.max(0, 1 - worth / bound);
    }

    public int seedlings() {
        return shares.stream().mapToInt(Part::seedlings).sum();
    }

    /** Flowers by the options' own figure. */
    public double flowers() {
        return shares.stream()
                .mapToDouble(part -> part.seedlings() * part.cross().flowersEach())
                .sum();
    }
}
