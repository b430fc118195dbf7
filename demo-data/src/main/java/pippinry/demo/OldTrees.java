package pippinry.demo;

import java.time.LocalDate;
import java.util.List;

/** What stood at Larkmoor before the first cross: old trees, one of them top-worked, the cordons, the stocks. */
final class OldTrees {

    private static final List<String> OLD = List.of("BOS", "WOR", "RIB", "LLA");
    private static final List<String> CORDONS = List.of(
            "FIE", "FLO", "PIN", "TOP", "COX", "SAN", "GOR", "ALK", "ENT", "CRP", "RUB", "HON", "ELS", "PRI", "DIS",
            "JGR", "GAL", "IDA", "BRA", "KID", "SPA", "JON", "EMP", "GOD", "RGA");
    private static final List<String> SECOND_KINDS = List.of("FAL", "GRE", "KAT", "ELL");
    private static final List<String> TOP_WORKED = List.of(
            "FIE", "FLO", "TOP", "PIN", "COX", "SAN", "GOR", "ALK", "RUB", "HON", "ELS", "DIS", "GAL", "IDA", "KID",
            "LLA", "WOR", "JON", "JUP", "EMP", "SUN", "KAR", "KAT", "GRE");
    private static final List<String> SIDES = List.of("N", "NE", "E", "SE", "S", "SW", "W", "NW");

    private final Holding holding;
    private final Book book;

    OldTrees(Holding holding) {
        this.holding = holding;
        this.book = holding.book();
    }

    void enter() {
        holding.founders().enter(book);
        stocks();
        for (int i = 0; i < OLD.size(); i++) {
            oldTree(OLD.get(i), i + 1);
        }
        for (int i = 0; i < CORDONS.size(); i++) {
            cordon(CORDONS.get(i), i + 1);
        }
        Tree host = tree("BOSA");
        for (int i = 0; i < TOP_WORKED.size(); i++) {
            limb(TOP_WORKED.get(i), host, 1.4 + 0.15 * (i % 9), SIDES.get(i % 8), i < 9 ? 2007 : i < 17 ? 2009 : 2012);
        }
        for (int i = 0; i < SECOND_KINDS.size(); i++) {
            limb(SECOND_KINDS.get(i), tree(CORDONS.get(16 + i) + "A"), 0.9, "top", 2014);
        }
    }

    private Tree tree(String tag) {
        return holding.trees().stream()
                .filter(tree -> tree.tag().equals(tag))
                .findFirst()
                .orElseThrow();
    }

    private void stocks() {
        for (String[] stock : new String[][] {{"M9", "M.9"}, {"M27", "M.27"}, {"MM106", "MM.106"}}) {
            book.add(book.row(Table.GENOTYPES)
                    .with("code", stock[0])
                    .with("name", stock[1])
                    .with("crop", "apple")
                    .with("kind", "rootstock")
                    .with("ploidy", 2)
                    .with("note", "stock"));
        }
    }

    private void oldTree(String code, int place) {
        Row row = book.row(Table.PLANTS)
                .with("made_on", "about 1950")
                .with("certainty", code.equals("RIB") ? "likely" : "sure")
                .with("note", code.equals("BOS") ? "top-worked; stock not known" : "stock not known");
        Tree tree = new Tree(
                holding.numbers().copy(code), holding.genotype(code), holding.genotype(code), "graft", "", 1950);
        holding.grow(tree, row);
        holding.ground().plant(book, tree, holding.ground().place("OLD", 1, place), "about 1950");
    }

    private void cordon(String code, int place) {
        Genotype genotype = holding.genotype(code);
        Tree tree =
                new Tree(holding.numbers().copy(code), genotype, genotype, "graft", place <= 14 ? "M9" : "M27", 2008);
        holding.grow(
                tree,
                book.row(Table.PLANTS)
                        .with("made_on", place <= 14 ? "about 2007" : "2010")
                        .with("certainty", "sure"));
        holding.ground()
                .plant(book, tree, holding.ground().place("PAR", 1, place), place <= 14 ? "about 2008" : "2011");
    }

    private void limb(String code, Tree host, double height, String side, int year) {
        Genotype genotype = holding.genotype(code);
        Tree tree = new Tree(holding.numbers().copy(code), genotype, genotype, "limb", "", year);
        holding.grow(
                tree,
                book.row(Table.PLANTS)
                        .with("host", host.tag())
                        .with("limb_height_m", height)
                        .with("limb_side", side)
                        .with("made_on", book.day(LocalDate.of(year, 4, 12), code))
                        .with("certainty", "sure"));
    }
}
