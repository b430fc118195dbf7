package pippinry.statistics.proportions;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.special.Beta;

/**
 * A rate that differs from group to group, and within a group from batch to batch, over a published prior.
 *
 * <p>Definition: the general rate m is beta, as the prior says; the rate of a group is Beta(m k1, (1-m) k1), of a batch in it
 * Beta(r k2, (1-r) k2) with r the group's rate; counts are binomial in a batch. Gelman, A. et al. 2013. Bayesian Data
 * Analysis, 3rd ed., chapter 5 (hierarchical binomial models; from memory, not looked up). The posterior is summed over a
 * grid of m, r, k1 and k2, k1 and k2 with equal prior weight on 2, 4, 8 ... 256, so groups borrow from each other as much
 * as the counts ask for. Beliefs are handed out as the beta distribution with the same mean and variance.
 *
 * <p>The prior's range spans values of different groups already, so m gets it with twice the strength (half the
 * variance, nearly), and the spread between groups and batches brings the rest. Cost: groups x 120,000 additions and (batches x 480)
 * beta functions.
 */
public final class NestedRates {

    private static final double[] SPREADS = {2, 4, 8, 16, 32, 64, 128, 256};
    private static final int MEANS = 30;
    private static final int RATES = 60;

    private final double[] means = new double[MEANS];
    private final double[] rates = new double[RATES];
    private final double[][][] rateGivenMean = new double[MEANS][SPREADS.length][RATES];
    private final Map<String, double[][]> likelihood = new LinkedHashMap<>();
    private final Map<String, double[][][]> sums = new LinkedHashMap<>();
    private final Map<String, Count> totals = new LinkedHashMap<>();
    private final double[][][] weight = new double[MEANS][SPREADS.length][SPREADS.length];

    /**
     * Learns from counts.
     *
     * @param groups batches of each group, such as years of a parent
     */
    public NestedRates(BetaBelief prior, Map<String, List<Count>> groups) {
        BetaBelief general = new BetaBelief(2 * prior.a(), 2 * prior.b());
        for (int i = 0; i < MEANS; i++) {
            means[i] = Math.min(1 - 1e-9, Math.max(1e-9, general.quantile((i + 0.5) / MEANS)));
        }
        for (int j = 0; j < RATES; j++) {
            rates[j] = square(Math.sin(Math.PI / 2 * (j + 0.5) / RATES));
        }
        spreadRates();
        groups.forEach(this::learn);
        weigh();
    }

    /** Belief about the rate of the next batch of a group; a group without counts is like {@link #next()}. */
    public BetaBelief next(String group) {
        double[][] known = likelihood.get(group);
        double[] moments = new double[3];
        for (int i = 0; i < MEANS; i++) {
            for (int k1 = 0; k1 < SPREADS.length; k1++) {
                for (int k2 = 0; k2 < SPREADS.length; k2++) {
                    add(moments, i, k1, k2, known == null ? null : known[k2], group);
                }
            }
        }
        double mean = moments[1] / moments[0];
        return BetaBelief.ofMoments(mean, Math.max(1e-12, moments[2] / moments[0] - mean * mean));
    }

    /** Belief about the rate of a batch of a group not seen yet. */
    public BetaBelief next() {
        return next("");
    }

    /** What was counted in a group; empty if nothing. */
    public Optional<Count> total(String group) {
        return Optional.ofNullable(totals.get(group));
    }

    /** What was counted altogether. */
    public Count total() {
        long successes = totals.values().stream().mapToLong(Count::successes).sum();
        return new Count(
                successes, totals.values().stream().mapToLong(Count::trials).sum());
    }

    private void spreadRates() {
        for (int i = 0; i < MEANS; i++) {
            for (int k = 0; k < SPREADS.length; k++) {
                BetaBelief around = new BetaBelief(means[i] * SPREADS[k], (1 - means[i]) * SPREADS[k]);
                double below = 0;
                for (int j = 0; j < RATES; j++) {
                    double upTo = around.atMost(square(Math.sin(Math.PI / 2 * (j + 1.0) / RATES)));
                    rateGivenMean[i][k][j] = upTo - below;
                    below = upTo;
                }
            }
        }
    }

    /** Likelihood of a group's batches for every rate of the group and spread of its batches, scaled by its largest. */
    private void learn(String group, List<Count> batches) {
        double[][] logs = new double[SPREADS.length][RATES];
        double largest = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < SPREADS.length; k++) {
            for (int j = 0; j < RATES; j++) {
                logs[k][j] = log(batches, rates[j] * SPREADS[k], (1 - rates[j]) * SPREADS[k]);
                largest = Math.max(largest, logs[k][j]);
            }
        }
        for (double[] row : logs) {
            for (int j = 0; j < RATES; j++) {
                row[j] = Math.exp(row[j] - largest);
            }
        }
        likelihood.put(group, logs);
        sums.put(group, summed(logs));
        totals.put(group, sum(batches));
    }

    private static Count sum(List<Count> batches) {
        return new Count(
                batches.stream().mapToLong(Count::successes).sum(),
                batches.stream().mapToLong(Count::trials).sum());
    }

    private static double log(List<Count> batches, double a, double b) {
        double base = Beta.logBeta(a, b);
        double sum = 0;
        for (Count batch : batches) {
            sum += Beta.logBeta(a + batch.successes(), b + batch.trials() - batch.successes()) - base;
        }
        return sum;
    }

    private double[][][] summed(double[][] given) {
        double[][][] result = new double[MEANS][SPREADS.length][SPREADS.length];
        for (int i = 0; i < MEANS; i++) {
            for (int k1 = 0; k1 < SPREADS.length; k1++) {
                for (int k2 = 0; k2 < SPREADS.length; k2++) {
                    double sum = 0;
                    for (int j = 0; j < RATES; j++) {
                        sum += rateGivenMean[i][k1][j] * given[k2][j];
                    }
                    result[i][k1][k2] = sum;
                }
            }
        }
        return result;
    }

    /** Weight of every general rate and both spreads, by all groups together. */
    private void weigh() {
        List<double[][][]> groups = new ArrayList<>(sums.values());
        double largest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < MEANS; i++) {
            for (int k1 = 0; k1 < SPREADS.length; k1++) {
                for (int k2 = 0; k2 < SPREADS.length; k2++) {
                    double log = 0;
                    for (double[][][] group : groups) {
                        log += Math.log(group[i][k1][k2]);
                    }
                    weight[i][k1][k2] = log;
                    largest = Math.max(largest, log);
                }
            }
        }
        for (double[][] plane : weight) {
            for (double[] row : plane) {
                for (int k = 0; k < row.length; k++) {
                    row[k] = Math.exp(row[k] - largest);
                }
            }
        }
    }

    private void add(double[] moments, int i, int k1, int k2, double[] seen, String group) {
        double whole = weight[i][k1][k2];
        if (whole < 1e-12) {
            return;
        }
        double scale = seen == null ? whole : whole / sums.get(group)[i][k1][k2];
        double spread = SPREADS[k2];
        for (int j = 0; j < RATES; j++) {
            double part = scale * rateGivenMean[i][k1][j] * (seen == null ? 1 : seen[j]);
            moments[0] += part;
            moments[1] += part * rates[j];
            moments[2] += part * rates[j] * (rates[j] * spread + 1) / (spread + 1);
        }
    }

    private static double square(double x) {
        return x * x;
    }
}
