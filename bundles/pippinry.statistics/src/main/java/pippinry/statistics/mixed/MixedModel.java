package pippinry.statistics.mixed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * y = X b + sum of Z u + e: records, fixed columns, random terms. An intercept is always there. Columns that depend on earlier ones
 * are dropped.
 */
public final class MixedModel {
    private final double[] records;
    private final FixedPart fixed;
    private final List<RandomTerm> random;

    private MixedModel(double[] records, FixedPart fixed, List<RandomTerm> random) {
        this.records = records;
        this.fixed = fixed;
        this.random = List.copyOf(random);
    }

    /** Begins a model of these records, all of them finite. */
    public static Draft of(double[] records) {
        return new Draft(records);
    }

    double[] records() {
        return records;
    }

    FixedPart fixed() {
        return fixed;
    }

    /** The random terms, in their order. */
    public List<RandomTerm> random() {
        return random;
    }

    /** The fixed columns that were kept, the intercept first. */
    public List<String> fixedColumns() {
        return fixed.names();
    }

    /** How many records there are. */
    public int size() {
        return records.length;
    }

    /** A model while it is put together. */
    public static final class Draft {
        /** The name of the column that is always there. */
        public static final String INTERCEPT = "intercept";

        private final double[] records;
        private final FixedPart fixed;
        private final List<RandomTerm> random = new ArrayList<>();

        private Draft(double[] records) {
            this.records = records.clone();
            if (Arrays.stream(records).anyMatch(y -> !Double.isFinite(y))) {
                throw new CannotBeEstimated("a record is not a finite number");
            }
            this.fixed = new FixedPart(records.length);
            int intercept = fixed.add(INTERCEPT);
            for (int record = 0; record < records.length; record++) fixed.put(record, intercept, 1);
        }

        /** A measured column. */
        public Draft covariate(String name, double[] values) {
            fits(values.length);
            int column = fixed.add(name);
            for (int record = 0; record < values.length; record++) fixed.put(record, column, values[record]);
            return this;
        }

        /**
         * Classes, each a column of ones and zeros but the first, which the intercept stands for.
         *
         * @param levels names of the columns, the first not used
         */
        public Draft classes(List<String> levels, int[] levelOf) {
            fits(levelOf.length);
            int[] column = new int[levels.size()];
            for (int level = 1; level < column.length; level++) column[level] = fixed.add(levels.get(level));
            for (int record = 0; record < levelOf.length; record++) {
                if (levelOf[record] > 0) fixed.put(record, column[levelOf[record]], 1);
            }
            return this;
        }

        /** A random term. */
        public Draft random(RandomTerm term) {
            fits(term.levelOf().length);
            random.add(term);
            return this;
        }

        private void fits(int length) {
            if (length != records.length) throw new IllegalArgumentException("one value for each record");
        }

        /**
         * The model.
         *
         * @throws CannotBeEstimated if there are no more records than fixed columns
         */
        public MixedModel done() {
            fixed.settle();
            if (records.length <= fixed.columns()) {
                throw new CannotBeEstimated(records.length + " records for " + fixed.columns()
                        + " fixed effects leave nothing to judge by; expected more records than effects");
            }
            return new MixedModel(records, fixed, random);
        }
    }
}
