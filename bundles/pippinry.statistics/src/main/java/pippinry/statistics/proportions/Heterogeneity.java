package pippinry.statistics.proportions;

import java.util.List;

/**
 * Several families held against one ratio: each by itself, all counts pooled, and whether the families differ.
 *
 * <p>Mather, K. 1951. The Measurement of Linkage in Heredity. Methuen. Heterogeneity is the sum of the families' chi-squares
 * less the pooled one. The contingency chi-square asks whether the families differ whatever the common ratio is; the
 * two agree only when the pooled counts fit.
 *
 * @param sum of the families' chi-squares, with the sum of their degrees
 * @param pooled all counts together against the ratio
 * @param difference sum less pooled
 * @param contingency families against classes, without the ratio
 */
public record Heterogeneity(Part sum, Part pooled, Part difference, Part contingency) {

    /** A chi-square with its degrees of freedom and upper tail. */
    public record Part(double chiSquare, int degrees, double p) {
        static Part of(double chiSquare, int degrees) {
            return new Part(chiSquare, degrees, GoodnessOfFit.upperTail(chiSquare, degrees));
        }
    }

    /**
     * @param families counts by class, one array for each family
     * @param ratio the same for all, all parts above zero
     */
    public static Heterogeneity of(List<long[]> families, double[] ratio) {
        if (families.size() < 2) {
            throw new IllegalArgumentException("Two families or more can differ, not " + families.size());
        }
        for (double part : ratio) {
            if (!(part > 0)) {
                throw new IllegalArgumentException("Leave classes out that the ratio does not allow: part " + part);
            }
        }
        long[] pooled = new long[ratio.length];
        double sum = 0;
        int degrees = 0;
        for (long[] family : families) {
            GoodnessOfFit fit = GoodnessOfFit.of(new Classes(family, ratio));
            sum += fit.chiSquare();
            degrees += fit.degrees();
            for (int i = 0; i < pooled.length; i++) {
                pooled[i] += family[i];
            }
        }
        GoodnessOfFit all = GoodnessOfFit.of(new Classes(pooled, ratio));
        return new Heterogeneity(
                Part.of(sum, degrees),
                Part.of(all.chiSquare(), all.degrees()),
                Part.of(Math.max(0, sum - all.chiSquare()), degrees - all.degrees()),
                contingency(families, pooled));
    }

    private static Part contingency(List<long[]> families, long[] pooled) {
        double chiSquare = 0;
        int seen = 0;
        long total = 0;
        for (long n : pooled) {
            seen += n > 0 ? 1 : 0;
            total += n;
        }
        for (long[] family : families) {
            long size = new Classes(family, asRatio(pooled)).total();
            for (int i = 0; i < pooled.length; i++) {
                double expected = (double) size * pooled[i] / total;
                chiSquare += expected == 0 ? 0 : (family[i] - expected) * (family[i] - expected) / expected;
            }
        }
        return Part.of(chiSquare, (families.size() - 1) * (seen - 1));
    }

    private static double[] asRatio(long[] counts) {
        double[] ratio = new double[counts.length];
        for (int i = 0; i < counts.length; i++) {
            ratio[i] = counts[i];
        }
        return ratio;
    }
}
