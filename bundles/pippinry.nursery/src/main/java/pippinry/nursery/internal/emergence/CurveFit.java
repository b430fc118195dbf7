package pippinry.nursery.internal.emergence;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.PointValuePair;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.hipparchus.optim.nonlinear.scalar.noderiv.SimplexOptimizer;

/**
 * Finds the {@link EmergenceCurve} that makes the counts most likely: a simplex search on ln(-b), logit d, ln e from several
 * starts, then Newton steps on b, d, e with numerical derivatives until they move less than a billionth.
 */
public final class CurveFit {

    /** Steepness and midpoint need three points of rise at least. */
    private static final int LEAST_FRUITFUL = 3;

    private static final double[] STEEPNESS = {2, 6, 20};
    private static final int EVALUATIONS = 20_000;
    private static final int NEWTON_STEPS = 30;
    private static final double STEP = 1e-4;

    private final Counting counting;

    private CurveFit(Counting counting) {
        this.counting = counting;
    }

    /** Empty where the counts do not hold a curve: too few intervals with seedlings, or all seeds up. */
    public static Optional<EmergenceCurve> of(Counting counting) {
        if (counting.fruitful() < LEAST_FRUITFUL || counting.emerged() >= counting.sown()) {
            return Optional.empty();
        }
        return new CurveFit(counting).fit();
    }

    private Optional<EmergenceCurve> fit() {
        double[] best = DoubleStream.of(STEEPNESS)
                .mapToObj(this::searchFrom)
                .min(Comparator.comparingDouble(PointValuePair::getValue))
                .map(PointValuePair::getPoint)
                .map(CurveFit::natural)
                .orElseThrow();
        double[] polished = polish(best);
        EmergenceCurve curve = EmergenceCurve.of(polished, curvature(polished), -loss(polished));
        return Double.isFinite(curve.shareError()) && Double.isFinite(curve.halfError())
                ? Optional.of(curve)
                : Optional.empty();
    }

    private PointValuePair searchFrom(double steepness) {
        double share = Math.min(0.98, (counting.emerged() + 0.5) / (counting.sown() + 1.0));
        double half = TimeToHalf.coolbear(counting).orElse(counting.lastDay());
        double[] start = {Math.log(steepness), Math.log(share / (1 - share)), Math.log(half)};
        PointValuePair found = new PointValuePair(start, Double.MAX_VALUE);
        // A simplex that has shrunk too soon is set up again where it stopped.
        for (int round = 0; round < 3; round++) {
            found = new SimplexOptimizer(1e-13, 1e-13)
                    .optimize(
                            new MaxEval(EVALUATIONS),
                            new ObjectiveFunction(at -> loss(natural(at))),
                            GoalType.MINIMIZE,
                            new InitialGuess(found.getPoint()),
                            new NelderMeadSimplex(new double[] {0.3, 0.3, 0.1}));
        }
        return found;
    }

    private static double[] natural(double[] at) {
        return new double[] {-Math.exp(at[0]), 1 / (1 + Math.exp(-at[1])), Math.exp(at[2])};
    }

    /** Newton's method; a step that makes it worse is not taken. */
    private double[] polish(double[] start) {
        double[] at = start.clone();
        for (int step = 0; step < NEWTON_STEPS; step++) {
            LUDecomposition curvature = new LUDecomposition(curvature(at));
            if (!curvature.getSolver().isNonSingular()) {
                return at;
            }
            double[] move = curvature
                    .getSolver()
                    .solve(new ArrayRealVector(gradient(at)))
                    .toArray();
            double[] next = {at[0] - move[0], at[1] - move[1], at[2] - move[2]};
            if (!(loss(next) <= loss(at))) {
                return at;
            }
            at = next;
            if (Math.abs(move[0] / at[0]) + Math.abs(move[1] / at[1]) + Math.abs(move[2] / at[2]) < 1e-9) {
                return at;
            }
        }
        return at;
    }

    /** Minus the log-likelihood; infinite outside the bounds. */
    private double loss(double[] at) {
        if (!(at[0] < 0 && at[1] > 0 && at[1] < 1 && at[2] > 0)) {
            return Double.POSITIVE_INFINITY;
        }
        double loss = 0;
        for (Counting.Interval interval : counting.intervals()) {
            if (interval.emerged() > 0) {
                loss -= interval.emerged() * Math.log(share(at, interval.to()) - share(at, interval.from()));
            }
        }
        int rest = counting.sown() - counting.emerged();
        return loss - rest * Math.log(1 - share(at, counting.lastDay()));
    }

    private static double share(double[] at, double day) {
        return day <= 0 ? 0 : at[1] / (1 + Math.exp(at[0] * (Math.log(day) - Math.log(at[2]))));
    }

    private double[] gradient(double[] at) {
        double[] gradient = new double[at.length];
        for (int i = 0; i < at.length; i++) {
            gradient[i] = (loss(moved(at, i, 1)) - loss(moved(at, i, -1))) / (2 * width(at, i));
        }
        return gradient;
    }

    private RealMatrix curvature(double[] at) {
        RealMatrix curvature = new Array2DRowRealMatrix(at.length, at.length);
        for (int i = 0; i < at.length; i++) {
            for (int j = 0; j <= i; j++) {
                double second = i == j ? bend(at, i) : twist(at, i, j);
                curvature.setEntry(i, j, second);
                curvature.setEntry(j, i, second);
            }
        }
        return curvature;
    }

    private double bend(double[] at, int i) {
        return (loss(moved(at, i, 1)) - 2 * loss(at) + loss(moved(at, i, -1))) / (width(at, i) * width(at, i));
    }

    private double twist(double[] at, int i, int j) {
        double sum = loss(moved(moved(at, i, 1), at, j, 1))
                - loss(moved(moved(at, i, 1), at, j, -1))
                - loss(moved(moved(at, i, -1), at, j, 1))
                + loss(moved(moved(at, i, -1), at, j, -1));
        return sum / (4 * width(at, i) * width(at, j));
    }

    private static double[] moved(double[] at, int i, int steps) {
        return moved(at, at, i, steps);
    }

    /** @param scale where the width of the step is taken from */
    private static double[] moved(double[] at, double[] scale, int i, int steps) {
        double[] moved = at.clone();
        moved[i] += steps * width(scale, i);
        return moved;
    }

    private static double width(double[] at, int i) {
        return STEP * Math.abs(at[i]);
    }
}
