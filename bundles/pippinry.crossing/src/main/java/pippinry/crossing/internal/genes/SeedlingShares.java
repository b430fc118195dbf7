package pippinry.crossing.internal.genes;

/** For every set of goals the share of a cross's seedlings that has them; made by a {@link SharePlan}. */
public final class SeedlingShares {

    private final double[] bySet;
    private final int turned;

    /**
     * Shares by set of bits. A bit is set when some need of the goal is met, or, for a goal of {@code turned}, when one
     * is not.
     */
    SeedlingShares(double[] bySet, int turned) {
        this.bySet = bySet;
        this.turned = turned;
    }

    /** Share that has the goal at this place of the plan's list. */
    public double of(int goal) {
        return ofAll(1 << goal);
    }

    /** Share that has all goals of the set, given by bits; 1 for the empty set. */
    public double ofAll(int set) {
        double sum = 0;
        for (int has = 0; has < bySet.length; has++) {
            sum += ((has ^ turned) & set) == set ? bySet[has] : 0;
        }
        return Math.min(1, sum);
    }
}
