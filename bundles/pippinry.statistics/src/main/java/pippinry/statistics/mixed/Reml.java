package pippinry.statistics.mixed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;

/**
 * Variances by restricted maximum likelihood. Steps by average information (A. R. Gilmour, R. Thompson and B. R. Cullis (1995)
 * Average information REML: an efficient algorithm for variance parameter estimation in linear mixed models, Biometrics
 * 51:1440-1450), halved while they lose likelihood; where that fails, a step of expectation and maximisation (A. P. Dempster, N. M.
 * Laird and D. B. Rubin (1977) Maximum likelihood from incomplete data via the EM algorithm, Journal of the Royal Statistical
 * Society B 39:1-38), which never loses any. A variance that shrinks to nothing is set to zero, its term left out, and looked at
 * once more in the end. Done when every variance changes by less than 1e-8 of itself. Cost: one {@link Likelihood} a step,
 * commonly 6 to 15 of them.
 */
public final class Reml {
    private static final double CONVERGED = 1e-8;
    private static final double SMALL = 1e-3;
    private static final double NOISE = 1e-12;
    private static final double SMALLEST_SHARE = 0.1;
    private static final int MOST_STEPS = 300;
    private static final int HALVINGS = 8;

    private final MixedModel model;
    private final List<String> notes = new ArrayList<>();
    private int steps;

    private Reml(MixedModel model) {
        this.model = model;
    }

    /**
     * Estimates the variances and then the effects.
     *
     * @throws CannotBeEstimated if nothing is left to explain
     */
    public static Estimates of(MixedModel model) {
        return new Reml(model).run();
    }

    /**
     * The effects at variances that are known.
     *
     * @param variances of the random terms in their order, the residual last; zero leaves a term out
     */
    public static Estimates at(MixedModel model, double... variances) {
        int terms = model.random().size();
        boolean fit = variances.length == terms + 1
                && Arrays.stream(variances).allMatch(v -> v >= 0 && Double.isFinite(v))
                && variances[terms] > 0;
        if (!fit) throw new IllegalArgumentException("a variance for each term and one above zero for the residual");
        List<Integer> active =
                IntStream.range(0, terms).filter(t -> variances[t] > 0).boxed().toList();
        Reml given = new Reml(model);
        return given.estimates(active, new Likelihood(given.equations(active), given.taken(active, variances)), false);
    }

    private Estimates run() {
        double whole = whole();
        List<Integer> active = new ArrayList<>();
        for (int t = 0; t < model.random().size(); t++) if (canBeTold(t)) active.add(t);
        double[] start = new double[model.random().size() + 1];
        Arrays.fill(start, whole / (active.size() + 1));
        Likelihood best = climb(active, new Likelihood(equations(active), taken(active, start)));
        best = lookAgain(active, best);
        return estimates(active, best, true);
    }

    /** The variance of the records once the fixed effects are taken out. */
    private double whole() {
        Likelihood plain = new Likelihood(equations(List.of()), new double[] {1});
        double[] left = plain.residuals;
        double square = Likelihood.product(left, left);
        double all = Likelihood.product(model.records(), model.records());
        if (!(square > 1e-20 * all)) {
            throw new CannotBeEstimated(
                    "the fixed effects explain every record wholly (or all records are equal): there is no"
                            + " variance to share out");
        }
        return square / (model.size() - model.fixed().columns());
    }

    /** Independent levels with one record each are the same as residuals. */
    private boolean canBeTold(int t) {
        RandomTerm term = model.random().get(t);
        int[] records = new int[term.levels()];
        for (int level : term.levelOf()) if (level >= 0) records[level]++;
        boolean repeated = Arrays.stream(records).anyMatch(count -> count > 1);
        boolean recorded = Arrays.stream(records).anyMatch(count -> count > 0);
        if (recorded && (repeated || term.covariance().isPresent())) return true;
        notes.add(
                recorded
                        ? "No level of " + term.name()
                                + " has a second record, so it cannot be told from the residual and is part of it."
                        : "No record has a level of " + term.name() + ", so nothing can be said of it.");
        return false;
    }

    private MixedEquations equations(List<Integer> active) {
        return new MixedEquations(
                model, active.stream().map(model.random()::get).toList());
    }

    private double[] taken(List<Integer> active, double[] variances) {
        double[] taken = new double[active.size() + 1];
        for (int i = 0; i < active.size(); i++) taken[i] = variances[active.get(i)];
        taken[active.size()] = variances[variances.length - 1];
        return taken;
    }

    private record Step(Likelihood there, boolean informed) {}

    /** Goes up until nothing changes; terms that come to nothing are taken out of the list. */
    private Likelihood climb(List<Integer> active, Likelihood start) {
        Likelihood here = start;
        while (steps < MOST_STEPS) {
            steps++;
            Step step = step(here);
            boolean settled = step.informed && settled(here.variances, step.there.variances);
            here = step.there;
            Likelihood fewer = withoutTheSmallest(active, here);
            if (fewer != null) {
                here = fewer;
            } else if (settled) {
                return here;
            }
        }
        notes.add("The variances had not settled after " + MOST_STEPS + " steps: the records hardly tell them apart.");
        return here;
    }

    private static boolean settled(double[] before, double[] after) {
        for (int i = 0; i < before.length; i++) {
            if (Math.abs(after[i] - before[i]) > CONVERGED * after[i]) return false;
        }
        return true;
    }

    /** Leaves the smallest variance out when it is small and the records are no less likely for it; null when they are. */
    private Likelihood withoutTheSmallest(List<Integer> active, Likelihood at) {
        double sum = Arrays.stream(at.variances).sum();
        int smallest = 0;
        for (int t = 1; t < active.size(); t++) if (at.variances[t] < at.variances[smallest]) smallest = t;
        if (active.isEmpty() || at.variances[smallest] > SMALL * sum) return null;
        int gone = smallest;
        List<Integer> left = new ArrayList<>(active);
        left.remove(gone);
        double[] variances = IntStream.range(0, at.variances.length)
                .filter(i -> i != gone)
                .mapToDouble(i -> at.variances[i])
                .toArray();
        Likelihood without = new Likelihood(equations(left), variances);
        if (without.value < at.value) return null;
        active.remove(gone);
        return without;
    }

    private Step step(Likelihood here) {
        double[] change = informed(here, here.slope());
        double part = 1;
        for (int halving = 0; change != null && halving < HALVINGS; halving++) {
            Likelihood there = tried(here, change, part);
            if (there != null && there.value >= here.value - NOISE * Math.abs(here.value)) return new Step(there, true);
            part /= 2;
        }
        return new Step(new Likelihood(here.equations, expectationStep(here)), false);
    }

    private static double[] informed(Likelihood here, double[] slope) {
        try {
            return new CholeskyDecomposition(here.averageInformation())
                    .getSolver()
                    .solve(new ArrayRealVector(slope, false))
                    .toArray();
        } catch (MathRuntimeException singular) {
            return null;
        }
    }

    private static Likelihood tried(Likelihood here, double[] change, double part) {
        double[] there = new double[change.length];
        for (int i = 0; i < there.length; i++) {
            there[i] = Math.max(here.variances[i] + part * change[i], SMALLEST_SHARE * here.variances[i]);
        }
        Likelihood likelihood = new Likelihood(here.equations, there);
        return Double.isFinite(likelihood.value) ? likelihood : null;
    }

    private static double[] expectationStep(Likelihood here) {
        MixedEquations equations = here.equations;
        int terms = equations.terms.size();
        double residual = here.variances[terms];
        double[] there = new double[terms + 1];
        double unexplained = equations.unknowns();
        for (int t = 0; t < terms; t++) {
            double trace = residual * equations.trace(t, here.inverse());
            there[t] = (equations.quadratic(t, here.solution) + trace)
                    / equations.terms.get(t).levels();
            unexplained -= trace / here.variances[t];
        }
        double square = Likelihood.product(here.residuals, here.residuals);
        there[terms] = (square + residual * unexplained) / equations.model.size();
        return there;
    }

    /** A term at zero comes back when a little of it makes the records likelier. */
    private Likelihood lookAgain(List<Integer> active, Likelihood best) {
        Likelihood here = best;
        for (int t = 0; t < model.random().size(); t++) {
            if (active.contains(t) || !canBeToldQuietly(t)) continue;
            double little = 1e-5 * Arrays.stream(here.variances).sum();
            List<Integer> more = new ArrayList<>(active);
            more.add(t);
            more.sort(null);
            double[] variances = new double[model.random().size() + 1];
            for (int i = 0; i < active.size(); i++) variances[active.get(i)] = here.variances[i];
            variances[t] = little;
            variances[variances.length - 1] = here.variances[active.size()];
            Likelihood with = new Likelihood(equations(more), taken(more, variances));
            if (with.value > here.value + 1e-8) {
                active.clear();
                active.addAll(more);
                here = climb(active, with);
            } else {
                notes.add("The variance of " + model.random().get(t).name()
                        + " is zero: the records are likeliest without it.");
            }
        }
        return here;
    }

    private boolean canBeToldQuietly(int t) {
        int before = notes.size();
        boolean told = canBeTold(t);
        while (notes.size() > before) notes.remove(notes.size() - 1);
        return told;
    }

    private Estimates estimates(List<Integer> active, Likelihood at, boolean estimated) {
        return new Estimates(model, List.copyOf(active), at, estimated, steps, notes);
    }
}
