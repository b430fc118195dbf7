package pippinry.demo;

import java.time.LocalDate;

/** A box of fruit in the cellar: softening from its firmness at picking to 40 N in the weeks it keeps. */
final class Box {

    private final String sample;
    private final Tree tree;
    private final LocalDate picked;
    private final double firmness;
    private final double weeksToSoft;
    private int fruits;
    private boolean failed;

    Box(String sample, Tree tree, LocalDate picked, int fruits, double firmness, double weeksToSoft) {
        this.sample = sample;
        this.tree = tree;
        this.picked = picked;
        this.fruits = fruits;
        this.firmness = firmness;
        this.weeksToSoft = weeksToSoft;
    }

    String sample() {
        return sample;
    }

    Tree tree() {
        return tree;
    }

    LocalDate picked() {
        return picked;
    }

    int weeks(LocalDate day) {
        return (int) java.time.temporal.ChronoUnit.WEEKS.between(picked, day);
    }

    /** Exponential softening, so that 40 N is reached after the weeks this lot keeps. */
    double firmness(LocalDate day) {
        return StrictMath.max(18, firmness * StrictMath.pow(40 / firmness, weeks(day) / weeksToSoft));
    }

    int fruits() {
        return fruits;
    }

    int take(int wanted) {
        int taken = Math.min(wanted, fruits);
        fruits -= taken;
        return taken;
    }

    void fail() {
        failed = true;
    }

    boolean isOpen() {
        return !failed && fruits > 0;
    }
}
