package pippinry.statistics.mixed;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;

/** What a mixed model says: variances, fixed and random effects, and how sure each is. */
public final class Estimates {
    /** The name of what no term explains. */
    public static final String RESIDUAL = "residual";

    /** A figure with its standard error; NaN when that is not known. */
    public record Value(double value, double se) {}

    /**
     * A random effect.
     *
     * @param se the square root of its prediction error variance, uncertainty of the fixed effects taken in
     * @param reliability from 0 to 1: how much of what could be known of it is known
     */
    public record Effect(double value, double se, double reliability) {}

    private final MixedModel model;
    private final List<Integer> active;
    private final Likelihood at;
    private final Optional<RealMatrix> covariance;
    private final int steps;
    private final List<String> notes;
    private double[] diagonal;

    Estimates(MixedModel model, List<Integer> active, Likelihood at, boolean estimated, int steps, List<String> notes) {
        this.model = model;
        this.active = active;
        this.at = at;
        this.steps = steps;
        this.notes = new ArrayList<>(notes);
        this.covariance = estimated ? inverse(at.averageInformation()) : Optional.empty();
        if (estimated && covariance.isEmpty()) {
            this.notes.add("The records cannot tell the variances apart: they have no standard errors.");
        }
    }

    private static Optional<RealMatrix> inverse(RealMatrix information) {
        try {
            return Optional.of(
                    new CholeskyDecomposition(information).getSolver().getInverse());
        } catch (MathRuntimeException singular) {
            return Optional.empty();
        }
    }

    /** Variances by term, the residual last; standard errors by the inverse of the average information, 0 for a variance at zero. */
    public Map<String, Value> variances() {
        Map<String, Value> variances = new LinkedHashMap<>();
        for (int t = 0; t < model.random().size(); t++) {
            int place = active.indexOf(t);
            variances.put(model.random().get(t).name(), place < 0 ? new Value(0, 0) : variance(place));
        }
        variances.put(RESIDUAL, variance(active.size()));
        return variances;
    }

    private Value variance(int place) {
        return new Value(at.variances[place], se(covariance.map(known -> known.getEntry(place, place))));
    }

    private static double se(Optional<Double> variance) {
        return variance.map(Math::sqrt).orElse(Double.NaN);
    }

    /** -½[(n-p) ln 2π + ln|V| + ln|X'V⁻¹X| + y'Py], with X as its columns were kept. */
    public double logLikelihood() {
        return at.value;
    }

    /** The fixed effects by column, the intercept first. */
    public Map<String, Value> fixed() {
        Map<String, Value> fixed = new LinkedHashMap<>();
        List<String> names = model.fixedColumns();
        for (int column = 0; column < names.size(); column++) {
            fixed.put(names.get(column), new Value(at.solution[column], Math.sqrt(errorVariance(column))));
        }
        return fixed;
    }

    private double errorVariance(int unknown) {
        if (diagonal == null) diagonal = at.equations.diagonal(at.inverse());
        return at.variances[active.size()] * diagonal[unknown];
    }

    /** The effects of a term by level; all zero when its variance is. */
    public List<Effect> effects(String term) {
        int number = 0;
        while (!model.random().get(number).name().equals(term)) number++;
        RandomTerm random = model.random().get(number);
        int place = active.indexOf(number);
        List<Effect> effects = new ArrayList<>(random.levels());
        for (int level = 0; level < random.levels(); level++) {
            effects.add(place < 0 ? new Effect(0, 0, 0) : effect(random, place, level));
        }
        return effects;
    }

    private Effect effect(RandomTerm random, int place, int level) {
        int unknown = at.equations.start[place] + level;
        double error = errorVariance(unknown);
        double whole = at.variances[place] * random.varianceOf(level);
        return new Effect(at.solution[unknown], Math.sqrt(error), Math.max(0, 1 - error / whole));
    }

    /** A term's variance over the sum of all; its standard error by the delta method. */
    public Value share(String term) {
        Map<String, Value> variances = variances();
        double sum = variances.values().stream().mapToDouble(Value::value).sum();
        double own = variances.get(term).value();
        int place = place(term);
        double variance = 0;
        for (int a = 0; a <= active.size(); a++) {
            for (int b = 0; b <= active.size(); b++) {
                double known = covariance.isPresent() ? covariance.get().getEntry(a, b) : Double.NaN;
                variance += slope(a, place, own, sum) * slope(b, place, own, sum) * known;
            }
        }
        return new Value(own / sum, place < 0 ? 0 : Math.sqrt(variance));
    }

    private int place(String term) {
        for (int i = 0; i < active.size(); i++) {
            if (model.random().get(active.get(i)).name().equals(term)) return i;
        }
        return term.equals(RESIDUAL) ? active.size() : -1;
    }

    private static double slope(int of, int place, double own, double sum) {
        return (of == place ? sum - own : -own) / (sum * sum);
    }

    /** How many steps the variances took. */
    public int steps() {
        return steps;
    }

    /** What a reader must know, a sentence each. */
    public List<String> notes() {
        return List.copyOf(notes);
    }
}
