package pippinry.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Seedlings get their numbers, spend a summer in pots beside the checks, and some are culled. */
final class Pots {

    private final Holding holding;
    private final Book book;
    private final Mistakes mistakes;
    private final Sight sight;

    Pots(Holding holding, Mistakes mistakes, Sight sight) {
        this.holding = holding;
        this.book = holding.book();
        this.mistakes = mistakes;
        this.sight = sight;
    }

    /** May: one number and one plant for each pot. */
    void number(Family family, LocalDate day) {
        int count = family.lots().stream().mapToInt(Lot::potted).sum();
        for (int index = 0; index < count; index++) {
            String number = holding.numbers().seedling(family.code());
            Mistakes.Parents truth = mistakes.parents(holding, family, number, index);
            Genotype genotype = born(family, number, truth, day.getYear());
            genotype(family, genotype, index);
            plant(family, genotype, index, day);
            oldTag(family, genotype, index);
        }
    }

    private Genotype born(Family family, String number, Mistakes.Parents truth, int sown) {
        String pollen = truth.pollen().map(Genotype::code).orElse("");
        double inbreeding = holding.kinship().inbreeding(truth.seed().code(), pollen);
        holding.kinship().born(number, truth.seed().code(), pollen);
        Genotype genotype = Meiosis.seedling(number, family.code(), sown, truth.seed(), truth.pollen(), inbreeding);
        holding.genotypes().put(number, genotype);
        family.seedlings().add(genotype);
        return genotype;
    }

    private void genotype(Family family, Genotype genotype, int index) {
        boolean mixed = family.code().equals("17-010");
        boolean open = family.pollen().isEmpty();
        book.add(book.row(Table.GENOTYPES)
                .with("code", genotype)
                .with("crop", "apple")
                .with("kind", "seedling")
                .with("ploidy", 2)
                .with("seed_parent", family.seed())
                .with("pollen_parent", mixed ? "FLO|GOR" : family.pollenOnFile())
                .with("seed_link", seedLink(family, index))
                .with("pollen_link", mixed || trayTurned(family, index) ? "doubtful" : open ? "" : "sure")
                .with("link_ground", ground(family, index))
                .with("year", genotype.sown()));
    }

    /** The tray of 14-005 and 14-006 fell in May 2015; a few pots were put back from memory. */
    private static boolean trayTurned(Family family, int index) {
        return family.code().equals("14-005") && index >= 9 && index <= 13
                || family.code().equals("14-006") && index >= 3 && index <= 6;
    }

    private static String seedLink(Family family, int index) {
        return trayTurned(family, index) ? "doubtful" : "sure";
    }

    private static String ground(Family family, int index) {
        if (trayTurned(family, index)) {
            return "tag put back from memory after the tray fell";
        }
        return family.code().equals("17-010") ? "tag; two vials were open that evening" : "tag";
    }

    private void plant(Family family, Genotype genotype, int index, LocalDate day) {
        Tree tree =
                new Tree(holding.numbers().copy(genotype.code()), genotype, genotype, "own-root", "", genotype.sown());
        holding.grow(
                tree,
                book.row(Table.PLANTS)
                        .with("made_on", book.day(day, "potted", family.code()))
                        .with("certainty", trayTurned(family, index) ? "doubtful" : "sure"));
    }

    /** The first two families had tags of their own before the numbers came. */
    private void oldTag(Family family, Genotype genotype, int index) {
        if (family.plan().year() <= 2012) {
            book.add(book.row(Table.NAMES)
                    .with("subject", genotype)
                    .with("name", (family.plan().year() == 2011 ? "FF" : "DP") + " " + (index + 1))
                    .with("kind", "old tag")
                    .with("from", genotype.sown()));
        }
    }

    /** Late summer: losses, scores, and the cull by the rule of the family's plan. */
    void screen(Family family, LocalDate day) {
        for (Tree tree : pots(family)) {
            Dice dice = Dice.of("pot", tree.tag());
            if (dice.chance(0.04) && !mistakes.isKept(tree.labelled().code())) {
                holding.end(
                        tree,
                        "dead",
                        book.day(day, tree.tag()),
                        dice.one("dried out", "vine weevil", "vole", "snapped off", ""));
                continue;
            }
            int scab = sight.potScab(tree, day.getYear());
            int mildew = sight.potMildew(tree, day.getYear());
            if (!book.fromNotebooks() || dice.chance(0.15)) {
                sight.write(tree.tag(), "scab_leaf", Integer.toString(scab), "", day);
            }
            if (!book.fromNotebooks()) {
                sight.write(tree.tag(), "mildew", Integer.toString(mildew), "", day);
                sight.write(tree.tag(), "tree.height_cm", Integer.toString(height(tree)), "cm", day.plusDays(14));
            }
            cull(family, tree, scab, mildew, day.plusDays(20), dice);
        }
    }

    private static int height(Tree tree) {
        return (int) Math.round(62
                + 9 * (tree.truly().worth(Trait.VIGOUR) - 5)
                + Dice.of("height", tree.tag()).normal(0, 12));
    }

    private void cull(Family family, Tree tree, int scab, int mildew, LocalDate day, Dice dice) {
        double severity =
                switch (family.plan().screen()) {
                    case "strict" -> scab >= 6 ? 0.72 : mildew >= 6 ? 0.7 : 0;
                    case "some" -> scab >= 7 ? 0.5 : 0;
                    default -> 0;
                };
        if (dice.chance(severity) && !mistakes.isKept(tree.labelled().code())) {
            discard(
                    tree,
                    scab >= 5
                            ? "scab " + scab + " in the pot beside infected checks"
                            : "mildew " + mildew + " in the pot",
                    day);
        }
    }

    private void discard(Tree tree, String grounds, LocalDate day) {
        sight.decide(tree.labelled(), "discard", grounds, day);
        holding.end(tree, "grubbed", book.day(day, tree.tag()), "discarded");
    }

    /** December: the best-grown clean ones get a tree; others go for want of room, save those still wanted in pots. */
    List<Tree> choose(Family family, int wanted, LocalDate day) {
        List<Tree> pots = new ArrayList<>(pots(family));
        pots.sort(Comparator.comparing(
                        (Tree tree) -> mistakes.isKept(tree.labelled().code()) ? 0 : 1)
                .thenComparing(tree -> unwanted(family, tree, day.getYear()))
                .thenComparing(Tree::tag));
        List<Tree> chosen = List.copyOf(pots.subList(0, Math.min(wanted, pots.size())));
        for (Tree tree : pots.subList(chosen.size(), pots.size())) {
            discard(tree, "weak growth and no room", day);
        }
        return chosen;
    }

    /** Growth counts; in the later families, which are screened strictly, a clean leaf counts as well. */
    private int unwanted(Family family, Tree tree, int year) {
        int scab = family.plan().screen().equals("strict") ? 5 * sight.potScab(tree, year) : 0;
        return scab - height(tree);
    }

    /** Still in pots: on own roots, without a place. */
    List<Tree> pots(Family family) {
        return holding.living()
                .filter(tree -> tree.form().equals("own-root") && tree.place().equals(Optional.empty()))
                .filter(tree -> tree.labelled().cross().equals(family.code()))
                .toList();
    }
}
