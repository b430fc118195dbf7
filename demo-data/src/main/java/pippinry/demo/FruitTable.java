package pippinry.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Test fruit: picked, weighed, pressed and tasted in autumn, and taken out of the cellar in winter. */
final class FruitTable {

    private static final double SOFT = 40;

    private final Holding holding;
    private final Book book;
    private final Sight sight;
    private final List<Box> boxes = new ArrayList<>();

    FruitTable(Holding holding, Sight sight) {
        this.holding = holding;
        this.book = holding.book();
        this.sight = sight;
    }

    void pickAll(int year) {
        holding.inField().filter(FruitTable::isTested).toList().forEach(tree -> pick(tree, year));
    }

    private static boolean isTested(Tree tree) {
        return !tree.isLimb()
                && (tree.truly().isSeedling()
                        || !List.of("PAR", "OLD")
                                .contains(tree.place().orElseThrow().block().code()));
    }

    private void pick(Tree tree, int year) {
        double lowest = holding.seasons().lowestInBloom(tree.truly(), year);
        double harm = lowest < -2.5 ? 0.95 : lowest < -1.5 ? 0.5 : 0;
        double full = tree.stock().isEmpty() ? 60 : tree.stock().equals("M27") ? 30 : 45;
        int fruits = (int) Math.round(full * tree.crop(year, harm));
        if (fruits == 0) {
            return;
        }
        LocalDate day = ripe(tree, year);
        if (tree.fruited().isEmpty() && tree.truly().isSeedling()) {
            sight.write(tree.tag(), "first_fruit", Integer.toString(fruits), "fruits", day, "IN", "");
        }
        tree.fruit(year);
        if (!book.fromNotebooks()) {
            int load = Sight.note(1 + 4.5 * fruits / full);
            sight.write(tree.tag(), "crop_load", Integer.toString(load), "", day, "IN", "");
        }
        sight.of(tree.labelled()).crop(day.getDayOfYear());
        if (fruits >= 4
                && (!book.fromNotebooks() || Dice.of("tasted", tree.tag(), year).chance(0.6))) {
            sample(tree, day, fruits);
        }
    }

    private LocalDate ripe(Tree tree, int year) {
        double day = sight.reading(tree, Trait.HARVEST, year, "IN");
        return LocalDate.ofYearDay(year, (int) Math.max(215, Math.min(312, Math.round(day))));
    }

    private void sample(Tree tree, LocalDate day, int fruits) {
        int year = day.getYear();
        String code = holding.numbers().next("F" + year % 100 + "-", 3);
        int taken = Math.min(fruits, 24);
        int tasted = Math.min(2, taken);
        int pressed = taken >= 8 ? 4 : 0;
        int stored = taken >= 8 ? taken - tasted - pressed : 0;
        book.add(book.row(Table.SAMPLES)
                .with("sample", code)
                .with("plant", tree.tag())
                .with("picked_on", book.day(day, code))
                .with("fruits", taken)
                .with("tasted", tasted)
                .with("pressed", pressed)
                .with("stored", stored)
                .with("store_c", stored > 0 ? 3.0 : null));
        measure(tree, code, day, pressed > 0);
        if (stored > 0) {
            store(tree, code, day, stored);
        }
    }

    private void measure(Tree tree, String sample, LocalDate day, boolean pressed) {
        int year = day.getYear();
        number(tree, sample, day, "time.harvest", day.getDayOfYear(), "day");
        number(tree, sample, day, "fruit.weight_g", Math.round(sight.reading(tree, Trait.WEIGHT, year, "IN")), "g");
        note(tree, sample, day, "fruit.over_area", Trait.BLUSH);
        note(tree, sample, day, "fruit.russet_amount", Trait.RUSSET);
        scabOnFruit(tree, sample, day);
        if (pressed) {
            number(tree, sample, day, "juice.ssc_brix", tenth(sight.reading(tree, Trait.BRIX, year, "IN")), "°Brix");
            number(tree, sample, day, "flesh.firmness_n", Math.round(firmness(tree, year)), "N");
            if (!book.fromNotebooks()) {
                double acid = StrictMath.max(1.6, sight.reading(tree, Trait.ACID, year, "IN"));
                number(tree, sample, day, "juice.ta_gl", tenth(acid), "g/l");
                number(
                        tree,
                        sample,
                        day,
                        "fruit.starch_1_10",
                        Dice.of("starch", sample).whole(5, 9),
                        "");
                hue(tree, sample, day);
            }
        }
        taste(tree, sample, day);
    }

    private double firmness(Tree tree, int year) {
        return StrictMath.max(45, sight.reading(tree, Trait.FIRMNESS, year, "IN"));
    }

    private void scabOnFruit(Tree tree, String sample, LocalDate day) {
        int leaf = sight.scab(tree, day.getYear(), "IN");
        int fruit = Math.max(1, leaf - Dice.of("fruit scab", sample).whole(0, 2));
        sight.write(tree.tag(), "scab_fruit", Integer.toString(fruit), "", day, "IN", sample);
        sight.of(tree.labelled()).scab(fruit);
    }

    private void hue(Tree tree, String sample, LocalDate day) {
        if (tree.truly().genome().has(Locus.MYB1)) {
            boolean pink = descendsFromCrippsPink(tree.truly())
                    && Dice.of("pink", tree.truly()).chance(0.6);
            String hue = pink ? "2" : Dice.of("hue", tree.truly()).one("1", "1", "3", "3", "4");
            sight.write(tree.tag(), "fruit.over_hue", hue, "", day, "IN", sample);
        }
    }

    private static boolean descendsFromCrippsPink(Genotype genotype) {
        return genotype.code().equals("CRP")
                || genotype.seedParent()
                        .filter(FruitTable::descendsFromCrippsPink)
                        .isPresent()
                || genotype.pollenParent()
                        .filter(FruitTable::descendsFromCrippsPink)
                        .isPresent();
    }

    private void taste(Tree tree, String sample, LocalDate day) {
        for (String judge : book.fromNotebooks() ? List.of("IN") : List.of("IN", "OD")) {
            int liked = liking(tree, day.getYear(), judge, 0);
            sight.write(tree.tag(), "like.flavour", Integer.toString(liked), "", day, judge, sample);
            sight.of(tree.labelled()).taste(liked);
            if (!book.fromNotebooks()) {
                double aroma = sight.reading(tree, Trait.AROMA, day.getYear(), judge);
                sight.write(tree.tag(), "sense.aroma", Integer.toString(sense(aroma)), "", day, judge, sample);
            }
        }
    }

    private int liking(Tree tree, int year, String judge, double change) {
        return sense(sight.reading(tree, Trait.LIKING, year, judge) - 0.6 + change);
    }

    private static int sense(double seen) {
        return (int) Math.max(0, Math.min(9, Math.round(seen)));
    }

    private void number(Tree tree, String sample, LocalDate day, String trait, double value, String unit) {
        sight.write(tree.tag(), trait, Row.plain(value), unit, day, "IN", sample);
    }

    private void note(Tree tree, String sample, LocalDate day, String code, Trait trait) {
        int value = trait == Trait.BLUSH && !tree.truly().genome().has(Locus.MYB1)
                ? 1
                : Sight.note(sight.reading(tree, trait, day.getYear(), "IN"));
        sight.write(tree.tag(), code, Integer.toString(value), "", day, "IN", sample);
    }

    private static double tenth(double value) {
        return Math.round(value * 10) / 10.0;
    }

    private void store(Tree tree, String sample, LocalDate day, int fruits) {
        double weeks = tree.truly().worth(Trait.STORE)
                + tree.spot(Trait.STORE)
                + Dice.of("keeping", sample).normal(0, 1.5);
        boxes.add(new Box(sample, tree, day, fruits, firmness(tree, day.getYear()), StrictMath.max(3, weeks)));
    }

    /** A day of take-outs in winter: press and taste what is due; what is soft or dull fails and is given up. */
    void takeOut(LocalDate day) {
        for (Box box : boxes) {
            if (box.isOpen()) {
                open(box, day);
            }
        }
    }

    private void open(Box box, LocalDate day) {
        int taken = box.take(5);
        book.add(book.row(Table.TAKEOUTS)
                .with("sample", box.sample())
                .with("out_on", book.day(day, box.sample()))
                .with("fruits", taken));
        double firmness = box.firmness(day);
        int liked = liking(box.tree(), day.getYear(), "IN", firmness < SOFT ? -2.5 : -0.4);
        number(box.tree(), box.sample(), day, "flesh.firmness_n", Math.round(firmness), "N");
        sight.write(box.tree().tag(), "like.flavour", Integer.toString(liked), "", day, "IN", box.sample());
        boolean failed = firmness < SOFT || liked < 3;
        boolean last = day.getMonthValue() == 3;
        if (failed || last) {
            sight.write(
                    box.tree().tag(),
                    "store.weeks",
                    Integer.toString(box.weeks(day)),
                    "weeks",
                    day,
                    "IN",
                    box.sample());
            sight.of(box.tree().labelled()).stored(box.weeks(day));
            box.fail();
        }
    }
}
