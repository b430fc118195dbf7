package pippinry.pedigree.internal.parentage;

/**
 * A locus with two kinds of alleles, read as copies of the one with the effect, or only seen: with a dominant allele, shown is
 * one copy or two, not shown is none. Diploids only. The population is in Hardy-Weinberg proportions.
 */
final class DosageMarker implements Marker {
    private static final int MOST = 2;

    private final String name;
    private final double[][] readings;
    private final double[] population;
    private final double errorRate;

    /**
     * @param readings by individual, for 0, 1 and 2 copies whether the reading allows them (1) or not (0); null where nothing was
     *     read
     * @param frequency of the allele with the effect in the population, above 0 and below 1
     */
    DosageMarker(String name, double[][] readings, double frequency, double errorRate) {
        this.name = name;
        this.readings = readings.clone();
        double other = 1 - frequency;
        this.population = new double[] {other * other, 2 * frequency * other, frequency * frequency};
        this.errorRate = errorRate;
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public boolean read(int who) {
        return readings[who] != null;
    }

    @Override
    public double errorRate() {
        return errorRate;
    }

    @Override
    public double fromParents(int child, int seedParent, int pollenParent) {
        double egg = gamete(seedParent);
        double grain = gamete(pollenParent);
        return read(child, (1 - egg) * (1 - grain), egg * (1 - grain) + grain * (1 - egg), egg * grain);
    }

    /** Chance that a gamete carries the effect. */
    private double gamete(int parent) {
        double carries = 0;
        double sum = 0;
        for (int copies = 0; copies <= MOST; copies++) {
            double chance = chance(parent, copies);
            sum += chance;
            carries += chance * copies / MOST;
        }
        return carries / sum;
    }

    private double chance(int who, int copies) {
        return who == ANYBODY || readings[who] == null
                ? population[copies]
                : population[copies] * readings[who][copies];
    }

    @Override
    public double fromSelfing(int child, int parent) {
        double one = chance(parent, 1);
        double none = chance(parent, 0) + one / 4;
        double two = chance(parent, 2) + one / 4;
        double sum = chance(parent, 0) + one + chance(parent, 2);
        return read(child, none / sum, one / 2 / sum, two / sum);
    }

    @Override
    public double inPopulation(int child) {
        return read(child, population[0], population[1], population[2]);
    }

    private double read(int child, double none, double one, double two) {
        double[] reading = readings[child];
        return reading[0] * none + reading[1] * one + reading[2] * two;
    }
}
