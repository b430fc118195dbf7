package pippinry.demo;

import java.time.LocalDate;

/** One tagged branch of pollinated flowers and what became of them. */
final class Bough {

    private final String tag;
    private final Tree tree;
    private final int flowers;
    private final LocalDate pollinated;
    private final double chanceOfSet;
    private int set;
    private int afterJune;
    private int harvested;
    private boolean lost;

    Bough(String tag, Tree tree, int flowers, LocalDate pollinated, double chanceOfSet) {
        this.tag = tag;
        this.tree = tree;
        this.flowers = flowers;
        this.pollinated = pollinated;
        this.chanceOfSet = chanceOfSet;
    }

    String tag() {
        return tag;
    }

    Tree tree() {
        return tree;
    }

    int flowers() {
        return flowers;
    }

    LocalDate pollinated() {
        return pollinated;
    }

    /** Plays out the summer: three counts, and now and then the tag is gone by harvest. */
    void ripen() {
        Dice dice = Dice.of("bough", tag);
        set = dice.binomial(flowers, chanceOfSet);
        afterJune = dice.binomial(set, 0.74);
        lost = afterJune > 0 && dice.chance(0.04);
        harvested = lost ? 0 : dice.binomial(afterJune, 0.87);
    }

    int set() {
        return set;
    }

    int afterJune() {
        return afterJune;
    }

    int harvested() {
        return harvested;
    }

    boolean lost() {
        return lost;
    }
}
