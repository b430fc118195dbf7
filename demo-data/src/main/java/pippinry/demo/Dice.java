package pippinry.demo;

import java.util.List;
import java.util.Random;

/**
 * Chance with a memory: the same seed and subject give the same throws on every machine, and a new subject does not
 * disturb the throws of another. Uses {@link Random}, whose sequence is fixed by its specification, and StrictMath.
 */
final class Dice {

    private static final long LARKMOOR = 20260327L;

    private final Random random;

    private Dice(long seed) {
        this.random = new Random(seed);
        random.nextInt();
    }

    /** The dice of one subject, such as a tree's tag or a season. */
    static Dice of(Object... subject) {
        long seed = LARKMOOR;
        for (Object part : subject) {
            for (char letter : part.toString().toCharArray()) {
                seed = seed * 6364136223846793005L + letter + 1442695040888963407L;
            }
            seed ^= seed >>> 29;
        }
        return new Dice(seed);
    }

    boolean chance(double probability) {
        return random.nextDouble() < probability;
    }

    double between(double low, double high) {
        return low + random.nextDouble() * (high - low);
    }

    /** A whole number from low to high, both included. */
    int whole(int low, int high) {
        return low + random.nextInt(high - low + 1);
    }

    double normal(double mean, double sd) {
        return mean + sd * random.nextGaussian();
    }

    int binomial(int trials, double probability) {
        int hits = 0;
        for (int i = 0; i < trials; i++) {
            hits += chance(probability) ? 1 : 0;
        }
        return hits;
    }

    /** A waiting time with the Weibull distribution S(t) = exp(-(t/scale)^shape). */
    double weibull(double shape, double scale) {
        return scale * StrictMath.pow(-StrictMath.log(1 - random.nextDouble()), 1 / shape);
    }

    @SafeVarargs
    final <T> T one(T... choices) {
        return choices[random.nextInt(choices.length)];
    }

    <T> T one(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }

    <T> void shuffle(List<T> list) {
        java.util.Collections.shuffle(list, random);
    }
}
