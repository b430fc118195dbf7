package pippinry.crossing.internal.quantity;

import java.util.List;

/**
 * How much of the parents' lead comes back in their families: regression of family means on the mean of the parents, over a
 * prior.
 *
 * <p>Offspring on mid-parent: b = h2 (Falconer, D. S. & Mackay, T. F. C. 1996. Introduction to Quantitative Genetics, 4th ed.,
 * chapter 10). Families count by the precision of their mean. The prior is {@value #PART} of the repeatability with a
 * standard deviation of {@value #DEVIATION} (our choice: most, not all, of what repeats is additive); without families it
 * stands alone.
 */
final class Heritability {

    private static final double PART = 0.6;
    private static final double DEVIATION = 0.15;
    private static final double LEAST = 0.05;

    private Heritability() {}

    /**
     * A family for the regression.
     *
     * @param parents mean of the parents' records, as deviation from the general mean
     * @param family mean of the family, likewise
     * @param variance of the family's mean about its expectation
     */
    record Family(double parents, double family, double variance) {}

    /** Heritability of one record, between {@value #LEAST} and the repeatability. */
    static double of(List<Family> families, double repeatability) {
        double precision = 1 / (DEVIATION * DEVIATION);
        double weighted = PART * repeatability * precision;
        double parents = mean(families, true);
        double offspring = mean(families, false);
        for (Family family : families) {
            double x = family.parents() - parents;
            double weight = 1 / family.variance();
            precision += weight * x * x;
            weighted += weight * x * (family.family() - offspring);
        }
        double most = Math.max(LEAST, repeatability);
        return Math.min(most, Math.max(LEAST, weighted / precision));
    }

    private static double mean(List<Family> families, boolean ofParents) {
        double sum = 0;
        double weights = 0;
        for (Family family : families) {
            sum += (ofParents ? family.parents() : family.family()) / family.variance();
            weights += 1 / family.variance();
        }
        return weights == 0 ? 0 : sum / weights;
    }
}
