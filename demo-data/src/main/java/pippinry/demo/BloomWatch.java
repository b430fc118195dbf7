package pippinry.demo;

import java.time.LocalDate;

/** Walks every second day in bloom: stages of the parents, and which seedlings flower for the first time. */
final class BloomWatch {

    private final Holding holding;
    private final Book book;
    private final Sight sight;

    BloomWatch(Holding holding, Sight sight) {
        this.holding = holding;
        this.book = holding.book();
        this.sight = sight;
    }

    void watch(int year) {
        holding.inField().filter(tree -> tree.firstFlower() <= year).forEach(tree -> {
            boolean parent = tree.place()
                    .filter(place -> place.block().code().equals("PAR"))
                    .isPresent();
            if (book.fromNotebooks()) {
                if (parent && year >= 2013 && Dice.of("noted", tree.tag(), year).chance(0.6)) {
                    stage(tree, year, 65);
                }
            } else if (parent) {
                stage(tree, year, 59);
                stage(tree, year, 61);
                stage(tree, year, 65);
                stage(tree, year, 69);
            } else if (tree.truly().isSeedling()) {
                stage(tree, year, 61);
                stage(tree, year, 65);
            }
            first(tree, year);
        });
    }

    private void stage(Tree tree, int year, int bbch) {
        LocalDate day = holding.seasons().stage(tree.truly(), year, bbch);
        sight.write(tree.tag(), "bbch", Integer.toString(bbch), "", day, "IN", "");
    }

    private void first(Tree tree, int year) {
        if (tree.truly().isSeedling() && tree.firstFlower() == year) {
            LocalDate day = holding.seasons().stage(tree.truly(), year, 65);
            int clusters = Dice.of("clusters", tree.tag()).whole(1, 24);
            sight.write(tree.tag(), "first_flower", Integer.toString(clusters), "clusters", day, "IN", "");
        }
    }
}
