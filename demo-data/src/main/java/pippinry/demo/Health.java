package pippinry.demo;

import java.time.LocalDate;
import java.util.List;

/** The August walk for scab and mildew, the winter look at canker and trunks, and the trees that die. */
final class Health {

    private final Holding holding;
    private final Book book;
    private final Sight sight;

    Health(Holding holding, Sight sight) {
        this.holding = holding;
        this.book = holding.book();
        this.sight = sight;
    }

    void walk(LocalDate day) {
        for (Tree tree : walked()) {
            Dice dice = Dice.of("walk", tree.tag(), day.getYear());
            if (book.fromNotebooks() && dice.chance(0.55)) {
                continue;
            }
            String scorer = tree.place()
                    .map(place -> place.row() % 2 == 0 ? "OD" : "IN")
                    .orElse("IN");
            boolean seen = !dice.chance(0.012);
            int scab = sight.scab(tree, day.getYear(), scorer);
            String sheet = sheet(tree, day);
            sight.writeFromSheet(sheet, tree.tag(), "scab_leaf", seen ? Integer.toString(scab) : "ns", day, scorer);
            if (seen) {
                sight.of(tree.labelled()).scab(scab);
                int mildew = Sight.note(sight.reading(tree, Trait.MILDEW, day.getYear(), scorer));
                sight.writeFromSheet(sheet, tree.tag(), "mildew", Integer.toString(mildew), day, scorer);
            }
        }
    }

    /** One sheet for each row and walk, such as S24-C3; the notebooks have none. */
    private String sheet(Tree tree, LocalDate day) {
        return tree.place()
                .filter(place -> !book.fromNotebooks())
                .map(place -> "S" + day.getYear() % 100 + "-" + place.block().code() + place.row())
                .orElse("");
    }

    private List<Tree> walked() {
        return holding.inField()
                .filter(tree -> !tree.isLimb())
                .filter(tree -> !tree.place().orElseThrow().block().code().equals("OLD"))
                .toList();
    }

    /** February of every other year: trunks, canker and vigour of young trees. */
    void measure(LocalDate day) {
        for (Tree tree : walked()) {
            if (tree.truly().isSeedling()) {
                int year = day.getYear();
                sight.write(tree.tag(), "tree.trunk_mm", Integer.toString(trunk(tree, year)), "mm", day, "IN", "");
                sight.write(tree.tag(), "tree.vigour", note(tree, Trait.VIGOUR, year), "", day, "IN", "");
                sight.write(tree.tag(), "canker", note(tree, Trait.CANKER, year), "", day, "IN", "");
            }
        }
    }

    private String note(Tree tree, Trait trait, int year) {
        double shift = trait == Trait.CANKER ? -2 : 0;
        return Integer.toString(Sight.note(sight.reading(tree, trait, year, "IN") + shift));
    }

    private static int trunk(Tree tree, int year) {
        double perYear = tree.stock().isEmpty() ? 11 : tree.stock().equals("M27") ? 5.5 : 7.5;
        double vigour = 1 + 0.09 * (tree.truly().worth(Trait.VIGOUR) + tree.spot(Trait.VIGOUR) - 5);
        double age = StrictMath.min(12, year - tree.made());
        return (int) Math.round(6 + perYear * vigour * age * (1 - age / 40));
    }

    /** The year's deaths among the seedlings in the field: few, more after the dry summer of 2018. */
    void lose(int year) {
        double hazard = year == 2018 ? 0.05 : 0.017;
        for (Tree tree : walked()) {
            Dice dice = Dice.of("death", tree.tag(), year);
            if (tree.truly().isSeedling() && tree.made() < year && dice.chance(hazard)) {
                LocalDate day = LocalDate.of(year, dice.whole(5, 9), dice.whole(1, 28));
                String cause = year == 2018
                        ? "drought"
                        : dice.one("canker", "voles", "honey fungus", "wind broke the union", "");
                holding.end(tree, "dead", book.day(day, tree.tag()), cause);
            }
        }
    }
}
