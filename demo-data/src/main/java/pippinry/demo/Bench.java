package pippinry.demo;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Grafting in March on stocks from the own stool bed, and reading in July what took. */
final class Bench {

    /** Whip-and-tongue on the bench takes 80 to 95 % (reference: nursery, planning band). */
    private static final double TAKE = 0.87;

    private final Holding holding;
    private final Book book;

    Bench(Holding holding) {
        this.holding = holding;
        this.book = holding.book();
    }

    /** The stool bed: ten mothers of a stock. */
    void stools(String stock, int row, LocalDate day) {
        for (int place = 1; place <= 10; place++) {
            Genotype none = stockOf(stock, day);
            Tree mother = new Tree(holding.numbers().copy(stock), none, none, "stool", "", day.getYear());
            holding.grow(
                    mother,
                    book.row(Table.PLANTS).with("made_on", book.day(day, stock)).with("certainty", "sure"));
            holding.ground().plant(book, mother, holding.ground().place("SB", row, place), book.day(day, stock));
        }
    }

    /** A stock is never crossed or scored, so nothing is known of its genes. */
    private static Genotype stockOf(String stock, LocalDate day) {
        return new Genotype(stock, Genome.ofStock(), Optional.empty(), Optional.empty(), day.getYear(), "");
    }

    /** Thin liners are lined out for another year, to be budded in summer. */
    void lineOut(String stock, int count, LocalDate day) {
        for (int i = 0; i < count; i++) {
            Genotype none = stockOf(stock, day);
            Tree liner = new Tree(holding.numbers().copy(stock), none, none, "liner", "", day.getYear());
            holding.grow(liner, book.row(Table.PLANTS).with("made_on", day).with("certainty", "sure"));
            holding.ground().plant(book, liner, holding.ground().free("NUR").orElseThrow(), day.toString());
        }
    }

    /** February: the stools are stripped and the rooted shoots counted. */
    void strip(LocalDate day) {
        for (Tree mother :
                holding.living().filter(tree -> tree.form().equals("stool")).toList()) {
            int age = day.getYear() - mother.made();
            int most = age < 2 ? 0 : age == 2 ? 4 : 8;
            if (most > 0) {
                book.add(book.row(Table.SCORES)
                        .with("subject", mother.tag())
                        .with("trait", "stool.liners")
                        .with(
                                "value",
                                Dice.of("liners", mother.tag(), day.getYear()).whole(most / 2, most))
                        .with("unit", "liners")
                        .with("date", day)
                        .with("scorer", "IN"));
            }
        }
    }

    Tree graft(Tree wood, String stock, LocalDate day) {
        return graft(wood, wood, stock, day);
    }

    /** Grafts one copy of the tree that was meant, with the wood that was taken; both are the same if all goes well. */
    Tree graft(Tree meant, Tree wood, String stock, LocalDate day) {
        Genotype labelled = meant.labelled();
        Tree graft = new Tree(
                holding.numbers().graft(labelled.code()), labelled, wood.truly(), "graft", stock, day.getYear());
        String made = book.day(day, graft.tag());
        holding.grow(
                graft,
                book.row(Table.PLANTS)
                        .with("copy_of", meant.tag())
                        .with("made_on", made)
                        .with("certainty", "sure"));
        Dice dice = Dice.of("graft", graft.tag());
        book.add(book.row(Table.GRAFTS)
                .with("plant", graft.tag())
                .with("date", made)
                .with("method", "whip and tongue, bench")
                .with("hand", dice.chance(0.75) ? "IN" : "OD")
                .with("stock_lot", book.fromNotebooks() ? "" : stock + "-" + day.getYear())
                .with("wood_from", meant.tag())
                .with(
                        "wood_height_m",
                        wood.form().equals("own-root") && !book.fromNotebooks() ? dice.between(0.4, 0.9) : null));
        return graft;
    }

    /** July: what has grown is taken; the rest is dead and written off. */
    void read(List<Tree> grafts, LocalDate grafted, LocalDate day) {
        for (Tree graft : grafts) {
            boolean taken = Dice.of("take", graft.tag()).chance(TAKE);
            book.change(
                    Table.GRAFTS,
                    graft.tag() + "/" + book.day(grafted, graft.tag()),
                    "read_on",
                    book.day(day, graft.tag()),
                    "result",
                    taken ? "taken" : "failed");
            if (!taken) {
                holding.end(graft, "dead", book.day(day, graft.tag()), "graft failed");
            }
        }
    }
}
