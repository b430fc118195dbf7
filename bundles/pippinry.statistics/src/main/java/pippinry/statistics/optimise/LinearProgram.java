package pippinry.statistics.optimise;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;
import org.ojalgo.optimisation.integer.IntegerStrategy;
import org.ojalgo.type.context.NumberContext;

/**
 * A linear program to be made as large as possible, some of its unknowns whole numbers, solved by ojAlgo (branch and bound
 * over the simplex method). Every result is checked against all bounds and constraints before it is handed out.
 */
public final class LinearProgram {

    private static final double TOLERANCE = 1e-6;

    static {
        // The library greets on standard output, where answers go, when it does not know the computer.
        System.setProperty("shut.up.ojAlgo", "true");
    }

    private record Unknown(double low, double high, boolean whole, double gain) {}

    private record Limit(Map<Integer, Double> factors, double low, double high) {}

    private final List<Unknown> unknowns = new ArrayList<>();
    private final List<Limit> limits = new ArrayList<>();

    /**
     * The best point found.
     *
     * @param values of the unknowns, in the order in which they were added
     * @param gain of that point
     * @param optimal true when the solver says that nothing better exists
     */
    public record Solution(double[] values, double gain, boolean optimal) {
        public Solution {
            values = values.clone();
        }

        @Override
        public double[] values() {
            return values.clone();
        }
    }

    /** Adds an unknown and returns its number. */
    public int unknown(double low, double high, double gain) {
        return add(low, high, false, gain);
    }

    /** Adds an unknown that must be a whole number and returns its number. */
    public int whole(double low, double high, double gain) {
        return add(low, high, true, gain);
    }

    /** Asks that a weighted sum of unknowns be at most so much. */
    public void atMost(Map<Integer, Double> factors, double high) {
        limits.add(new Limit(Map.copyOf(factors), Double.NEGATIVE_INFINITY, high));
    }

    /** Asks that a weighted sum of unknowns be at least so much. */
    public void atLeast(Map<Integer, Double> factors, double low) {
        limits.add(new Limit(Map.copyOf(factors), low, Double.POSITIVE_INFINITY));
    }

    /**
     * The best point; empty when no point keeps all limits.
     *
     * @throws IllegalStateException if the solver gives a point that breaks a limit, which must not happen
     */
    public Optional<Solution> solve() {
        return solve(0);
    }

    /**
     * A point whose gain is within this share of the best; looking no further saves most of the time where many points are nearly alike.
     *
     * @param enough 0 for the best point itself, else a share such as 0.001
     */
    public Optional<Solution> solve(double enough) {
        ExpressionsBasedModel model = new ExpressionsBasedModel();
        if (enough > 0) {
            int digits = (int) Math.max(1, Math.floor(-Math.log10(enough)));
            model.options.integer(IntegerStrategy.DEFAULT.withGapTolerance(NumberContext.of(digits)));
        }
        for (int i = 0; i < unknowns.size(); i++) {
            describe(model.newVariable("x" + i), unknowns.get(i));
        }
        for (int i = 0; i < limits.size(); i++) {
            constrain(model.newExpression("c" + i), limits.get(i), model);
        }
        Optimisation.Result result = model.maximise();
        if (!result.getState().isFeasible()) {
            return Optional.empty();
        }
        double[] values = new double[unknowns.size()];
        for (int i = 0; i < values.length; i++) {
            double value = result.doubleValue(i);
            values[i] = unknowns.get(i).whole() ? Math.rint(value) : value;
        }
        check(values);
        return Optional.of(new Solution(values, gain(values), result.getState().isOptimal()));
    }

    private int add(double low, double high, boolean whole, double gain) {
        unknowns.add(new Unknown(low, high, whole, gain));
        return unknowns.size() - 1;
    }

    private static void describe(Variable variable, Unknown unknown) {
        variable.integer(unknown.whole()).weight(BigDecimal.valueOf(unknown.gain()));
        if (!Double.isInfinite(unknown.low())) {
            variable.lower(BigDecimal.valueOf(unknown.low()));
        }
        if (!Double.isInfinite(unknown.high())) {
            variable.upper(BigDecimal.valueOf(unknown.high()));
        }
    }

    private static void constrain(Expression expression, Limit limit, ExpressionsBasedModel model) {
        limit.factors().forEach((unknown, factor) -> expression.set(model.getVariable(unknown), factor));
        if (!Double.isInfinite(limit.low())) {
            expression.lower(BigDecimal.valueOf(limit.low()));
        }
        if (!Double.isInfinite(limit.high())) {
            expression.upper(BigDecimal.valueOf(limit.high()));
        }
    }

    private double gain(double[] values) {
        double sum = 0;
        for (int i = 0; i < values.length; i++) {
            sum += unknowns.get(i).gain() * values[i];
        }
        return sum;
    }

    private void check(double[] values) {
        for (int i = 0; i < values.length; i++) {
            keep(values[i], unknowns.get(i).low(), unknowns.get(i).high(), "unknown " + i);
        }
        for (int i = 0; i < limits.size(); i++) {
            double sum = 0;
            for (Map.Entry<Integer, Double> part : limits.get(i).factors().entrySet()) {
                sum += part.getValue() * values[part.getKey()];
            }
            keep(sum, limits.get(i).low(), limits.get(i).high(), "limit " + i);
        }
    }

    private static void keep(double value, double low, double high, String what) {
        double slack = TOLERANCE * Math.max(1, Math.abs(value));
        if (value < low - slack || value > high + slack) {
            throw new IllegalStateException(
                    "The solver broke " + what + ": " + value + " outside " + low + " to " + high);
        }
    }
}
