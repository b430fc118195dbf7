package pippinry.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** From the pot to the row: own roots are planted as they are, others are grafted first and planted a year later. */
final class Field {

    private final Holding holding;
    private final Book book;
    private final Bench bench;
    private final Pots pots;
    private final Mistakes mistakes;
    private final Map<String, List<Tree>> chosen = new HashMap<>();
    private final Map<String, List<Tree>> grafts = new HashMap<>();

    Field(Holding holding, Bench bench, Pots pots, Mistakes mistakes) {
        this.holding = holding;
        this.book = holding.book();
        this.bench = bench;
        this.pots = pots;
        this.mistakes = mistakes;
    }

    /** First December: choose; own roots go straight into the row. */
    void firstWinter(Family family, int wanted, LocalDate day) {
        List<Tree> trees = pots.choose(family, wanted, day);
        chosen.put(family.code(), trees);
        switch (family.plan().tree()) {
            case "own-root" -> trees.forEach(tree -> plant(tree, family.plan().block(), day));
            case "mixed" -> trees.subList(0, trees.size() / 2).forEach(tree -> plant(tree, "A", day));
            default -> {}
        }
    }

    private void plant(Tree tree, String block, LocalDate day) {
        Place place = holding.ground()
                .free(block)
                .orElseThrow(() -> new IllegalStateException("block " + block + " is full"));
        holding.ground().plant(book, tree, place, book.day(day, tree.tag()));
    }

    /** Second March: those still in pots are grafted. */
    void graft(Family family, LocalDate day) {
        graftSome(family, Integer.MAX_VALUE, day);
    }

    /** As many as there is time for. */
    void graftSome(Family family, int most, LocalDate day) {
        List<Tree> made = new ArrayList<>();
        String stock =
                family.plan().tree().equals("mixed") ? "M9" : family.plan().tree();
        List<Tree> inPots = chosen.getOrDefault(family.code(), List.of()).stream()
                .filter(tree -> tree.alive() && tree.place().isEmpty())
                .toList();
        for (int i = 0; i < Math.min(most, inPots.size()); i++) {
            made.add(bench.graft(meant(family, inPots, i), inPots.get(i), stock, day));
        }
        grafts.put(family.code(), made);
    }

    /**
     * The tree whose number the graft gets. In March 2015 two bundles of 13-004 were open on the bench and one graft got
     * its neighbour's label; in March 2023 two labels of 21-013 changed places, and nobody has noticed.
     */
    private Tree meant(Family family, List<Tree> inPots, int index) {
        String where = family.code() + " " + index;
        return switch (where) {
            case "13-004 3" -> wrongly(inPots.get(3), inPots.get(4), "two bundles were open on the bench");
            case "21-013 6" -> wrongly(inPots.get(6), inPots.get(7), "two labels changed places on the bench");
            case "21-013 7" -> wrongly(inPots.get(7), inPots.get(6), "two labels changed places on the bench");
            default -> inPots.get(index);
        };
    }

    private Tree wrongly(Tree wood, Tree label, String how) {
        mistakes.tell("graft of " + wood.labelled(), how + ": labelled as a graft of " + label.labelled());
        return label;
    }

    void read(Family family, LocalDate grafted, LocalDate day) {
        bench.read(grafts.getOrDefault(family.code(), List.of()), grafted, day);
    }

    /** Second December: what took is planted; where it failed the own-root tree takes the place; pots are given up. */
    void secondWinter(Family family, LocalDate day) {
        List<Tree> taken = grafts.getOrDefault(family.code(), List.of()).stream()
                .filter(Tree::alive)
                .toList();
        taken.forEach(graft -> plant(graft, family.plan().block(), day));
        boolean copies = family.plan().year() >= 2021;
        for (Tree pot : chosen.getOrDefault(family.code(), List.of())) {
            if (pot.alive() && pot.place().isEmpty()) {
                settle(pot, taken.stream().anyMatch(graft -> graft.labelled() == pot.labelled()), copies, family, day);
            }
        }
    }

    private void settle(Tree pot, boolean grafted, boolean copies, Family family, LocalDate day) {
        if (!grafted) {
            plant(pot, family.plan().block(), day);
        } else if (copies
                && Dice.of("second copy", pot.tag()).chance(0.5)
                && holding.ground().free("NUR").isPresent()) {
            plant(pot, "NUR", day);
        } else {
            holding.end(pot, "grubbed", book.day(day, pot.tag()), "the graft stands, the pot is given up");
        }
    }
}
