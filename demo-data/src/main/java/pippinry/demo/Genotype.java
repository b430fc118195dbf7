package pippinry.demo;

import java.util.Optional;

/**
 * One genetic individual as it truly is, beside what the records say of it.
 *
 * @param code as on file
 * @param seedParent true seed parent, empty for a cultivar
 * @param pollenParent true pollen parent, empty for a cultivar or unknown stray pollen
 * @param sown year of sowing, or of planting here for a cultivar
 * @param cross code of the cross that the records give it, empty for a cultivar
 */
record Genotype(
        String code,
        Genome genome,
        Optional<Genotype> seedParent,
        Optional<Genotype> pollenParent,
        int sown,
        String cross) {

    /**
     * A chosen clone shows more in size than it hands on: seedlings of cultivars are a third smaller than their parents'
     * mean (Brown 1960, Euphytica, reference: funnel).
     */
    private static final double CHOSEN_FOR_SIZE = 40;

    boolean isSeedling() {
        return !cross.isEmpty();
    }

    boolean isTriploid() {
        return genome.s().size() == 3;
    }

    /** What the tree would show on average: breeding value plus the effect of the single genes. */
    double worth(Trait trait) {
        double value = genome.value(trait);
        return switch (trait) {
            case SCAB -> genome.has(Locus.RVI6) ? 1.2 : value;
            case ACID -> genome.has(Locus.MA) ? value : value - 3.2;
            case WEIGHT -> isSeedling() ? value : value + CHOSEN_FOR_SIZE;
            case STORE -> value + 3.0 * genome.copies(Locus.ACS1) - 3.0;
            case BLUSH -> genome.has(Locus.MYB1) ? value : 1;
            default -> value;
        };
    }

    @Override
    public String toString() {
        return code;
    }
}
