package pippinry.crossing.internal.genes;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Works out which goals the seedlings of a cross reach by the loci of their parents.
 *
 * <p>For every linkage group each kind of egg meets each kind of pollen; groups are independent. Exact for the gametes given.
 * What a seedling has by its copies is tabled once, so that many crosses go fast: cost 4^loci for a group and 4^goals for
 * joining two.
 */
public final class SharePlan {

    /** More goals with loci than this are not told apart. */
    public static final int MOST_GOALS = 12;

    private final int goals;
    private final int turned;
    private final List<int[][]> tables = new ArrayList<>();

    /**
     * Prepares.
     *
     * @param goals at most {@link #MOST_GOALS}
     */
    public SharePlan(List<GeneticGoal> goals, List<LinkageGroup> groups) {
        if (goals.size() > MOST_GOALS) {
            throw new IllegalArgumentException("More than " + MOST_GOALS + " goals with loci: " + goals.size());
        }
        this.goals = goals.size();
        int all = 0;
        for (int goal = 0; goal < goals.size(); goal++) {
            all |= goals.get(goal).every() ? 1 << goal : 0;
        }
        this.turned = all;
        groups.forEach(group -> tables.add(table(goals, group)));
    }

    /**
     * Shares among the seedlings.
     *
     * @param eggs share of each kind of egg, for each group in its order
     * @param pollen likewise
     */
    public SeedlingShares shares(List<double[]> eggs, List<double[]> pollen) {
        double[] sofar = new double[1 << goals];
        sofar[0] = 1;
        for (int group = 0; group < tables.size(); group++) {
            sofar = join(sofar, ofGroup(tables.get(group), eggs.get(group), pollen.get(group)));
        }
        return new SeedlingShares(sofar, turned);
    }

    private double[] ofGroup(int[][] table, double[] eggs, double[] pollen) {
        double[] shares = new double[1 << goals];
        for (int egg = 0; egg < eggs.length; egg++) {
            for (int grain = 0; grain < pollen.length && eggs[egg] > 0; grain++) {
                shares[table[egg & grain][egg | grain]] += eggs[egg] * pollen[grain];
            }
        }
        return shares;
    }

    /** Which goals a seedling has by this group, told by the loci with two copies and those with at least one. */
    private static int[][] table(List<GeneticGoal> goals, LinkageGroup group) {
        int kinds = 1 << group.loci().size();
        int[][] table = new int[kinds][kinds];
        for (int goal = 0; goal < goals.size(); goal++) {
            for (Need need : goals.get(goal).needs()) {
                int locus = group.loci().indexOf(need.locus().name());
                if (locus >= 0) {
                    mark(table, goal, locus, need, goals.get(goal).every());
                }
            }
        }
        return table;
    }

    private static void mark(int[][] table, int goal, int locus, Need need, boolean every) {
        for (int two = 0; two < table.length; two++) {
            for (int any = 0; any < table.length; any++) {
                boolean met = need.metBy((two >> locus & 1) + (any >> locus & 1));
                table[two][any] |= met != every ? 1 << goal : 0;
            }
        }
    }

    private static double[] join(double[] one, double[] other) {
        double[] both = new double[one.length];
        int[] present = present(other);
        for (int i = 0; i < one.length; i++) {
            if (one[i] > 0) {
                for (int j : present) {
                    both[i | j] += one[i] * other[j];
                }
            }
        }
        return both;
    }

    private static int[] present(double[] shares) {
        int[] present = new int[shares.length];
        int n = 0;
        for (int i = 0; i < shares.length; i++) {
            if (shares[i] > 0) {
                present[n++] = i;
            }
        }
        return Arrays.copyOf(present, n);
    }
}
