package pippinry.demo;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Larkmoor itself: the land, the trees, the families, and the book in which it is all written down. */
final class Holding {

    private final Book book = new Book();
    private final Numbers numbers = new Numbers(book);
    private final Ground ground = new Ground();
    private final Founders founders = new Founders();
    private final Kinship kinship = new Kinship();
    private final Seasons seasons = new Seasons(new Weather());
    private final Map<String, Genotype> genotypes = new LinkedHashMap<>();
    private final List<Tree> trees = new ArrayList<>();
    private final Map<String, Family> families = new LinkedHashMap<>();

    Holding() {
        founders.all().forEach(genotype -> genotypes.put(genotype.code(), genotype));
    }

    Book book() {
        return book;
    }

    Numbers numbers() {
        return numbers;
    }

    Ground ground() {
        return ground;
    }

    Founders founders() {
        return founders;
    }

    Kinship kinship() {
        return kinship;
    }

    Seasons seasons() {
        return seasons;
    }

    Weather weather() {
        return seasons.weather();
    }

    Genotype genotype(String code) {
        Genotype genotype = genotypes.get(code);
        if (genotype == null) {
            throw new IllegalArgumentException("no genotype " + code);
        }
        return genotype;
    }

    Map<String, Genotype> genotypes() {
        return genotypes;
    }

    Map<String, Family> families() {
        return families;
    }

    List<Tree> trees() {
        return trees;
    }

    Stream<Tree> living() {
        return trees.stream().filter(Tree::alive);
    }

    Stream<Tree> inField() {
        return trees.stream().filter(Tree::inField);
    }

    Stream<Tree> copies(Genotype labelled) {
        return living().filter(tree -> tree.labelled() == labelled);
    }

    /** Writes a new plant on file and remembers it. */
    Tree grow(Tree tree, Row row) {
        trees.add(tree);
        book.add(row.with("tag", tag(tree))
                .with("genotype", tree.labelled().code())
                .with("kind", tree.form())
                .with("rootstock", tree.stock())
                .with("status", "alive"));
        return tree;
    }

    private static String tag(Tree tree) {
        return tree.tag();
    }

    /** A plant comes to its end: dead, grubbed, lost or given. */
    void end(Tree tree, String status, String day, String cause) {
        tree.end();
        ground.clear(book, tree, day);
        book.change(Table.PLANTS, tree.tag(), "status", status, "ended_on", day, "cause", cause);
    }

    /** The tree's only other copies, so that a last one is not given up by mistake. */
    Optional<Tree> otherCopy(Tree tree) {
        return copies(tree.labelled()).filter(other -> other != tree).findFirst();
    }
}
