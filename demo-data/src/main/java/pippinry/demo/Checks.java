package pippinry.demo;

import java.time.LocalDate;
import java.util.Map;

/** The six check trees among the seedlings: known to catch scab or mildew here, or known to be worth beating. */
final class Checks {

    private static final Map<String, String> WHY = Map.of(
            "GOD",
            "check tree: catches scab",
            "COX",
            "check tree: catches scab and canker",
            "IDA",
            "check tree: catches mildew",
            "FIE",
            "check tree: the one to beat");

    private final Holding holding;

    Checks(Holding holding) {
        this.holding = holding;
    }

    /** Keeps the places free until the check trees come. */
    void reserve() {
        Ground ground = holding.ground();
        ground.reserve(ground.place("A", 2, 13), "check");
        ground.reserve(ground.place("A", 5, 13), "check");
        ground.reserve(ground.place("B", 2, 15), "check");
        ground.reserve(ground.place("B", 5, 15), "check");
        ground.reserve(ground.place("C", 2, 28), "check");
        ground.reserve(ground.place("C", 5, 28), "check");
    }

    void plant(int year) {
        switch (year) {
            case 2012 -> {
                plant("GOD", "A", 2, 13, year, "MM106");
                plant("IDA", "A", 5, 13, year, "MM106");
            }
            case 2015 -> {
                plant("GOD", "B", 2, 15, year, "M9");
                plant("COX", "B", 5, 15, year, "M9");
            }
            case 2020 -> {
                plant("GOD", "C", 2, 28, year, "M27");
                plant("FIE", "C", 5, 28, year, "M27");
            }
            default -> {}
        }
    }

    private void plant(String code, String block, int row, int place, int year, String stock) {
        Genotype genotype = holding.genotype(code);
        Book book = holding.book();
        Tree tree = new Tree(holding.numbers().copy(code), genotype, genotype, "graft", stock, year - 1);
        holding.grow(
                tree,
                book.row(Table.PLANTS)
                        .with("made_on", book.day(LocalDate.of(year - 1, 3, 20), code, block))
                        .with("certainty", "sure")
                        .with("note", WHY.get(code)));
        holding.ground()
                .plant(
                        book,
                        tree,
                        holding.ground().place(block, row, place),
                        book.day(LocalDate.of(year, 12, 4), tree.tag()));
    }
}
