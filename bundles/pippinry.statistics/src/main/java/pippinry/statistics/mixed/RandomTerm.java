package pippinry.statistics.mixed;

import java.util.Arrays;
import java.util.Optional;
import pippinry.statistics.sparse.SparseSymmetric;

/**
 * A random effect with one variance: level by level, independent or with a known covariance between levels up to that variance.
 *
 * @param name as results call it
 * @param levels how many there are, recorded or not
 * @param levelOf the level of each record, from 0; negative where the record has none
 * @param covariance of the levels; empty when they are independent
 */
public record RandomTerm(String name, int levels, int[] levelOf, Optional<Covariance> covariance) {

    /**
     * A known covariance between levels, such as the relationship of individuals.
     *
     * @param inverse of the matrix, levels by levels
     * @param logDeterminant of the matrix itself, not of the inverse
     * @param variances the diagonal of the matrix
     */
    public record Covariance(SparseSymmetric inverse, double logDeterminant, double[] variances) {
        public Covariance {
            if (variances.length != inverse.size()) {
                throw new IllegalArgumentException("as many variances as the inverse has rows");
            }
        }
    }

    public RandomTerm {
        boolean fits = levels > 0 && Arrays.stream(levelOf).allMatch(level -> level < levels);
        if (!fits || covariance.isPresent() && covariance.get().inverse().size() != levels) {
            throw new IllegalArgumentException(
                    "levels of " + name + " from 0 to " + (levels - 1) + ", with a covariance of as many");
        }
    }

    /** Independent levels. */
    public static RandomTerm independent(String name, int levels, int[] levelOf) {
        return new RandomTerm(name, levels, levelOf, Optional.empty());
    }

    /** The variance of a level before anything is known of it, as a multiple of the term's variance. */
    double varianceOf(int level) {
        return covariance.map(known -> known.variances()[level]).orElse(1.0);
    }

    double logDeterminant() {
        return covariance.map(Covariance::logDeterminant).orElse(0.0);
    }
}
