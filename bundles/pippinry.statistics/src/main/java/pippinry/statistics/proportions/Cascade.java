package pippinry.statistics.proportions;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;

/**
 * A chain of losses: units go through stages one after another, at each stage a share passes, and a unit that passes
 * may become several for the next stage (a capsule its ovules).
 *
 * <p>Given the shares, units are independent; the shares themselves are beliefs, so counts at a stage are beta-binomial
 * given the count before. The probability of at least k at the end is found from the end backwards,
 * g_i(x) = sum_y P(y of x pass stage i) g_i+1(copies y), without simulation. Stages that do not multiply are first joined to one by
 * {@link BetaBelief#times}, an approximation by moments; all else is exact. Cost about n k for n starts and one
 * multiplying stage.
 *
 * <p>Assumed: shares of different stages are independent, and units within a clump share nothing but the rates.
 */
public final class Cascade {

    private static final int MOST = 1 << 20;
    private static final double LARGE = 1e200;

    /**
     * One stage.
     *
     * @param copies how many units one that passes becomes, at least 1
     */
    public record Stage(String name, BetaBelief passes, int copies) {
        public Stage {
            if (copies < 1) {
                throw new IllegalArgumentException("A unit that passes stays at least one, not " + copies);
            }
        }

        public double mean() {
            return passes.mean() * copies;
        }
    }

    private final List<Stage> stages;
    private final List<Stage> joined;

    public Cascade(List<Stage> stages) {
        if (stages.isEmpty()) {
            throw new IllegalArgumentException("A cascade has at least one stage");
        }
        this.stages = List.copyOf(stages);
        this.joined = join(stages);
    }

    public List<Stage> stages() {
        return stages;
    }

    /** Expected number of units after the last stage for one start. */
    public double mean() {
        return stages.stream().mapToDouble(Stage::mean).reduce(1, (x, y) -> x * y);
    }

    /** The cascade up to and including the given stage, counted from 0. */
    public Cascade upTo(int stage) {
        return new Cascade(stages.subList(0, stage + 1));
    }

    /** Probability of at least {@code least} units after the last stage. */
    public double atLeast(int least, int starts) {
        return new Tail(least).from(0, starts);
    }

    /** The smallest number of starts with this certainty of at least so many at the end; empty beyond a million. */
    public OptionalInt startsNeeded(int least, double sure) {
        if (least < 1 || !(sure > 0 && sure < 1)) {
            throw new IllegalArgumentException(
                    "Wanted at least one with a certainty inside 0 to 1: " + least + ", " + sure);
        }
        Tail tail = new Tail(least);
        int high = 1;
        while (tail.from(0, high) < sure) {
            if (high >= MOST) {
                return OptionalInt.empty();
            }
            high *= 2;
        }
        int low = high / 2;
        while (high - low > 1) {
            int middle = (low + high) / 2;
            if (tail.from(0, middle) < sure) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return OptionalInt.of(high);
    }

    /** The largest count at the end that is reached with at least this probability. */
    public int reachedWith(double probability, int starts) {
        int low = 0;
        int high = 1;
        while (atLeast(high, starts) >= probability) {
            low = high;
            high *= 2;
        }
        while (high - low > 1) {
            int middle = (low + high) / 2;
            if (atLeast(middle, starts) >= probability) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static List<Stage> join(List<Stage> stages) {
        List<Stage> result = new ArrayList<>();
        Stage open = null;
        for (Stage stage : stages) {
            open = open == null
                    ? stage
                    : new Stage(open.name() + ", " + stage.name(), open.passes().times(stage.passes()), stage.copies());
            if (stage.copies() > 1) {
                result.add(open);
                open = null;
            }
        }
        if (open != null) {
            result.add(open);
        }
        return List.copyOf(result);
    }

    /** Probability of reaching a wanted count, remembered by stage and number of units entering it. */
    private final class Tail {
        private final int least;
        private final List<double[]> known = new ArrayList<>();

        Tail(int least) {
            this.least = least;
            joined.forEach(stage -> known.add(new double[0]));
        }

        double from(int stage, int units) {
            boolean last = stage == joined.size() - 1;
            return last ? finish(units) : pass(stage, units);
        }

        private double finish(int units) {
            Stage stage = joined.get(joined.size() - 1);
            int wanted = (least + stage.copies() - 1) / stage.copies();
            return wanted > units ? 0 : 1 - stage.passes().fewerThan(wanted, units);
        }

        /** Chance of the end, weighed over how many pass; the weights need not be scaled beforehand. */
        private double pass(int stage, int units) {
            Stage here = joined.get(stage);
            double a = here.passes().a();
            double b = here.passes().b();
            double term = 1;
            double weights = 0;
            double sum = 0;
            for (int y = 0; y <= units; y++) {
                weights += term;
                sum += term * remembered(stage + 1, y, here.copies());
                term *= (units - y) / (y + 1.0) * ((a + y) / (b + units - y - 1));
                if (weights > LARGE) {
                    weights /= LARGE;
                    sum /= LARGE;
                    term /= LARGE;
                }
            }
            return sum / weights;
        }

        private double remembered(int stage, int passed, int copies) {
            double[] values = known.get(stage);
            if (passed >= values.length) {
                double[] longer = Arrays.copyOf(values, Math.max(16, 2 * (passed + 1)));
                Arrays.fill(longer, values.length, longer.length, Double.NaN);
                known.set(stage, longer);
                values = longer;
            }
            if (Double.isNaN(values[passed])) {
                boolean sure = passed > 0 && values[passed - 1] == 1;
                values[passed] = sure ? 1 : from(stage, passed * copies);
            }
            return values[passed];
        }
    }
}
