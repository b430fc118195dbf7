package pippinry.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Branches that make no seed for a cross: bagged without pollen, left open, or with a tag that nobody has bound yet. */
final class OddBoughs {

    /** Seed of the branch whose tag is not bound. */
    static final String LOT_UNBOUND = "L25-X";

    private final Holding holding;
    private final Book book;
    private final Visits visits;
    private final List<Bough> controls = new ArrayList<>();
    private Optional<Bough> unbound = Optional.empty();

    OddBoughs(Holding holding, Visits visits) {
        this.holding = holding;
        this.book = holding.book();
        this.visits = visits;
    }

    /** Beside a hand cross: ten flowers in a bag that get no pollen, and fifteen left to the bees. */
    void control(Family family) {
        if (family.plan().kind().equals("hand") && !book.fromNotebooks()) {
            Tree tree = family.boughs().get(0).tree();
            double selfing = family.seed().code().equals("FIE") ? 0.06 : 0.004;
            controls.add(tagged(family, tree, "control_no_pollen", 10, selfing));
            controls.add(tagged(family, tree, "control_open", 15, 0.3));
        }
    }

    private Bough tagged(Family family, Tree tree, String kind, int flowers, double chance) {
        LocalDate day = holding.seasons().stage(family.seed(), family.plan().year(), 61);
        Bough bough = new Bough(holding.numbers().bough(family.code()), tree, flowers, day, chance);
        book.add(book.row(Table.POLLINATIONS)
                .with("tag", bough.tag())
                .with("cross", family.code())
                .with("plant", tree.tag())
                .with("kind", kind)
                .with("flowers", flowers));
        if (kind.equals("control_no_pollen")) {
            visits.add(bough, day.minusDays(2), 12, "bagged", flowers, "");
        }
        return bough;
    }

    void countSet() {
        controls.forEach(bough -> {
            bough.ripen();
            LocalDate day = bough.pollinated().plusDays(22);
            visits.add(bough, day, 18, "set", bough.set(), "");
            visits.lose(bough.tag(), day, bough.flowers() - bough.set(), "not set");
            book.change(Table.POLLINATIONS, bough.tag(), "set_fruits", bough.set());
        });
    }

    void countAfterJune(int year) {
        LocalDate day = LocalDate.of(year, 7, 8);
        controls.stream().filter(bough -> bough.set() > 0).forEach(bough -> {
            visits.add(bough, day, 18, "june", bough.afterJune(), "");
            visits.lose(bough.tag(), day, bough.set() - bough.afterJune(), "June drop");
        });
    }

    /** The fruits of controls are counted and eaten. */
    void pick(int year) {
        LocalDate day = LocalDate.of(year, 9, 20);
        controls.forEach(bough -> {
            if (bough.set() > 0) {
                visits.add(bough, day, 16, "harvest", bough.harvested(), "");
                visits.lose(bough.tag(), day, bough.afterJune() - bough.harvested(), "fell early");
            }
            book.change(Table.POLLINATIONS, bough.tag(), "harvested_fruits", bough.harvested());
        });
        controls.clear();
    }

    /** May 2025: a branch of Fiesta was pollinated in a hurry before the rain, and the tag was never bound to a cross. */
    void forget(int year) {
        if (year == 2025) {
            Genotype fiesta = holding.genotype("FIE");
            Tree tree = holding.copies(fiesta).filter(Tree::isLimb).findFirst().orElseThrow();
            LocalDate day = holding.seasons().stage(fiesta, year, 61).plusDays(2);
            Bough bough = new Bough(holding.numbers().next("T-04", 2), tree, 13, day, 0.4);
            book.add(book.row(Table.POLLINATIONS)
                    .with("tag", bough.tag())
                    .with("plant", tree.tag())
                    .with("kind", "hand")
                    .with("flowers", bough.flowers())
                    .with("note", "done in a hurry before the rain; which pollen?"));
            visits.add(bough, day, 19, "pollinated", bough.flowers(), "");
            unbound = Optional.of(bough);
        }
    }

    /** October: its fruits are picked all the same, and their seed kept apart. */
    void pickForgotten(int year) {
        if (year == 2025) {
            Bough bough = unbound.orElseThrow();
            bough.ripen();
            LocalDate day = LocalDate.of(2025, 9, 29);
            visits.add(bough, LocalDate.of(2025, 6, 12), 18, "set", bough.set(), "");
            visits.add(bough, day, 16, "harvest", bough.harvested(), "");
            visits.lose(bough.tag(), day, bough.flowers() - bough.harvested(), "not set or dropped");
            book.change(
                    Table.POLLINATIONS, bough.tag(), "set_fruits", bough.set(), "harvested_fruits", bough.harvested());
            new OtherSeed(holding)
                    .keep(
                            LOT_UNBOUND,
                            "fruits under tag " + bough.tag() + ", cross not known yet",
                            day,
                            bough.harvested(),
                            6 * bough.harvested());
        }
    }
}
