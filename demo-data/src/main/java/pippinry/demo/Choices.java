package pippinry.demo;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/** December at the kitchen table: who stays, who is copied, who becomes a parent, who goes. */
final class Choices {

    private final Holding holding;
    private final Sight sight;

    Choices(Holding holding, Sight sight) {
        this.holding = holding;
        this.sight = sight;
    }

    /** Seedlings with fruit in two years or more are kept, watched or discarded on what was seen. */
    void review(LocalDate day) {
        fruited(tree -> tree.fruited().size() >= 2)
                .filter(genotype ->
                        List.of("", "watch").contains(sight.of(genotype).decision()))
                .forEach(genotype -> review(genotype, day));
    }

    private void review(Genotype genotype, LocalDate day) {
        Impression seen = sight.of(genotype);
        boolean bad = seen.worstScab() >= 6 || seen.liking() < 4.6;
        if (bad && !Dice.of("soft spot", genotype).chance(0.15)) {
            sight.decide(genotype, "discard", seen.words(), day);
        } else if (seen.order() > 5.5) {
            sight.decide(genotype, "keep", seen.words(), day);
        } else if (seen.decision().isEmpty()) {
            sight.decide(genotype, "watch", seen.words(), day);
        } else if (seen.years() >= 4) {
            sight.decide(genotype, "discard", "four crops and nothing to say for it: " + seen.words(), day);
        }
    }

    private java.util.stream.Stream<Genotype> fruited(Predicate<Tree> which) {
        return holding
                .inField()
                .filter(tree -> tree.truly().isSeedling() && !tree.fruited().isEmpty())
                .filter(which)
                .map(Tree::labelled)
                .distinct()
                .toList()
                .stream();
    }

    /** March: what was discarded at the last review and has been looked at again is dug out. */
    void grub(LocalDate day, int left) {
        holding.inField()
                .filter(tree -> tree.truly().isSeedling()
                        && sight.of(tree.labelled()).decision().equals("discard"))
                .skip(left)
                .toList()
                .forEach(tree -> holding.end(tree, "grubbed", holding.book().day(day, tree.tag()), "discarded"));
    }

    /** The best so far for a second look in several copies. */
    List<Genotype> best(int count, LocalDate day, String decision) {
        List<Genotype> best = fruited(tree -> true)
                .filter(genotype -> !List.of("discard", "advance", "copy")
                        .contains(sight.of(genotype).decision()))
                .sorted(Comparator.comparingDouble(
                                (Genotype genotype) -> -sight.of(genotype).order())
                        .thenComparing(Genotype::code))
                .limit(count)
                .toList();
        best.forEach(
                genotype -> sight.decide(genotype, decision, sight.of(genotype).words(), day));
        return best;
    }

    /** Seedlings of a cross that flower by this year and stand in the field under their right number, best first. */
    List<Genotype> flowering(String cross, int year) {
        return holding.inField()
                .filter(tree -> tree.labelled().cross().equals(cross) && tree.labelled() == tree.truly())
                .filter(tree -> tree.firstFlower() <= year)
                .map(Tree::labelled)
                .distinct()
                .sorted(best())
                .toList();
    }

    private Comparator<Genotype> best() {
        return Comparator.comparingDouble(
                        (Genotype genotype) -> -sight.of(genotype).order())
                .thenComparing(Genotype::code);
    }

    /** The best of these that can be crossed as wished. */
    Genotype parent(List<Genotype> candidates, Predicate<Genotype> fits, LocalDate day) {
        Genotype chosen = candidates.stream()
                .filter(fits)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("none of " + candidates + " fits"));
        sight.decide(
                chosen,
                "parent",
                "used before it is proved, to save years: " + sight.of(chosen).words(),
                day);
        return chosen;
    }

    void advance(List<Genotype> genotypes, LocalDate day) {
        genotypes.forEach(genotype -> sight.decide(
                genotype, "advance", "second stage: " + sight.of(genotype).words(), day));
    }
}
