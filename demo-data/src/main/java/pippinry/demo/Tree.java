package pippinry.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One plant: what its tag says and what it truly is, where it stands, and how it fares. */
final class Tree {

    private final String tag;
    private final Genotype labelled;
    private final Genotype truly;
    private final String form;
    private final String stock;
    private final int made;
    private final List<Integer> fruited = new ArrayList<>();
    private Optional<Place> place = Optional.empty();
    private String placedFrom = "";
    private boolean alive = true;

    /**
     * @param labelled what it is on file
     * @param truly what it is; another kind only where a label went wrong
     * @param form plant kind: own-root, graft, limb, stool
     * @param stock code of the rootstock, empty on own roots
     */
    Tree(String tag, Genotype labelled, Genotype truly, String form, String stock, int made) {
        this.tag = tag;
        this.labelled = labelled;
        this.truly = truly;
        this.form = form;
        this.stock = stock;
        this.made = made;
    }

    String tag() {
        return tag;
    }

    Genotype labelled() {
        return labelled;
    }

    Genotype truly() {
        return truly;
    }

    String form() {
        return form;
    }

    String stock() {
        return stock;
    }

    int made() {
        return made;
    }

    boolean isLimb() {
        return form.equals("limb");
    }

    boolean alive() {
        return alive;
    }

    void end() {
        alive = false;
    }

    Optional<Place> place() {
        return place;
    }

    String placedFrom() {
        return placedFrom;
    }

    void stand(Place where, String from) {
        place = Optional.of(where);
        placedFrom = from;
    }

    void leave() {
        place = Optional.empty();
    }

    /** Stands in the field, on a wall or a branch, rather than in a pot or bed. */
    boolean inField() {
        return alive
                && (isLimb() || place.filter(where -> !where.block().isBed()).isPresent());
    }

    void fruit(int year) {
        fruited.add(year);
    }

    List<Integer> fruited() {
        return fruited;
    }

    /**
     * Year of first flowers. Seedlings: Weibull years from seed with shape 6, scale 7.8 on own roots and 6.3 on dwarf
     * stock, which brings it forward by 1.5 years (Visser 1964, reference: juvenility); carried over to all copies of the seedling. Grafts of a
     * cultivar flower in their third year.
     */
    int firstFlower() {
        if (!truly.isSeedling()) {
            return made + 3;
        }
        double scale = stock.isEmpty() ? 7.8 : 6.3;
        double years = Dice.of("juvenile", truly).weibull(6, scale)
                * StrictMath.exp(truly.worth(Trait.PRECOCITY))
                * Dice.of("juvenile", tag).normal(1, 0.06);
        return Math.max(truly.sown() + (int) Math.round(years), stock.isEmpty() ? truly.sown() + 3 : made + 2);
    }

    /** The first fruit comes with the first flowers or the year after. */
    int firstFruit() {
        return firstFlower() + (Dice.of("first fruit", tag).chance(0.6) ? 0 : 1);
    }

    /** Share of a full crop in a year; trees tend to rest after a heavy year. */
    double crop(int year, double frostHarm) {
        if (year < firstFruit()) {
            return 0;
        }
        double grown = StrictMath.min(1, 0.25 + 0.2 * (year - firstFruit()));
        boolean biennial = Dice.of("biennial", tag).chance(0.3);
        double rest = biennial && (year + Dice.of("resting year", tag).whole(0, 1)) % 2 == 0 ? 0.25 : 1;
        return grown * rest * (1 - frostHarm) * Dice.of("crop", tag, year).between(0.4, 1.1);
    }

    /** The lasting effect of tree and spot on a trait, a third of all that is not inherited. */
    double spot(Trait trait) {
        return Dice.of("spot", tag, trait).normal(0, trait.environmentSd() * StrictMath.sqrt(1 / 3.0));
    }
}
