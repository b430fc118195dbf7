package pippinry.demo;

import java.util.Locale;

/**
 * What a seedling inherits in small steps: the spread of true breeding values in an unselected family (standard
 * deviation), and the heritability of one reading of one tree. Heritabilities are of the order published for apple
 * seedlings (from memory); they are the truth of Larkmoor, not a claim about apples.
 */
enum Trait {
    BLOOM(0, 2.4, 0.85),
    HARVEST(274, 11, 0.75),
    SCAB(5, 1.3, 0.5),
    MILDEW(4.2, 1.2, 0.45),
    CANKER(4, 1.0, 0.35),
    VIGOUR(5.2, 0.9, 0.4),
    WEIGHT(115, 20, 0.5),
    BRIX(13, 0.8, 0.5),
    ACID(7.6, 1.3, 0.55),
    FIRMNESS(72, 7, 0.55),
    STORE(15, 4, 0.5),
    AROMA(5.6, 0.9, 0.3),
    LIKING(5.8, 0.7, 0.25),
    BLUSH(5, 1.3, 0.6),
    RUSSET(2.4, 0.9, 0.5),
    PRECOCITY(0, 0.1, 0.5);

    private final double mean;
    private final double geneticSd;
    private final double heritability;

    Trait(double mean, double geneticSd, double heritability) {
        this.mean = mean;
        this.geneticSd = geneticSd;
        this.heritability = heritability;
    }

    double mean() {
        return mean;
    }

    double geneticSd() {
        return geneticSd;
    }

    double heritability() {
        return heritability;
    }

    /** Spread of everything that is not inherited, from h2 = Va / (Va + Ve). */
    double environmentSd() {
        return geneticSd * StrictMath.sqrt((1 - heritability) / heritability);
    }

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
