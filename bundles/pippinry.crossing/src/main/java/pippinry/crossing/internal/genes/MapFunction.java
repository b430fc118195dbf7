package pippinry.crossing.internal.genes;

/** How map distance in centimorgans turns into the chance of recombination, and back. */
public enum MapFunction {
    /** Without interference: Haldane, J. B. S. 1919. Journal of Genetics 8:299-309. */
    HALDANE {
        @Override
        public double recombination(double centimorgans) {
            return -Math.expm1(-2 * check(centimorgans) / 100) / 2;
        }

        @Override
        public double distance(double recombination) {
            return -50 * Math.log1p(-2 * checkShare(recombination));
        }
    },
    /** With interference as usual in plants: Kosambi, D. D. 1944. Annals of Eugenics 12:172-175. */
    KOSAMBI {
        @Override
        public double recombination(double centimorgans) {
            return Math.tanh(2 * check(centimorgans) / 100) / 2;
        }

        @Override
        public double distance(double recombination) {
            return 25 * Math.log((1 + 2 * checkShare(recombination)) / (1 - 2 * recombination));
        }
    };

    /** Chance that the two loci come apart in a gamete, 0 to 1/2. */
    public abstract double recombination(double centimorgans);

    /** Map distance in centimorgans. */
    public abstract double distance(double recombination);

    private static double check(double centimorgans) {
        if (!(centimorgans >= 0)) {
            throw new IllegalArgumentException("A map distance is not negative: " + centimorgans);
        }
        return centimorgans;
    }

    private static double checkShare(double recombination) {
        if (!(recombination >= 0 && recombination < 0.5)) {
            throw new IllegalArgumentException("Recombination lies from 0 to below 1/2, not at " + recombination);
        }
        return recombination;
    }
}
