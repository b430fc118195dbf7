package pippinry.demo;

import java.time.LocalDate;
import java.util.Comparator;

/** What the two of them found out too late: a tag gone, a graft that does not fit its mother, a tree that walked off. */
final class Doubts {

    private final Holding holding;
    private final Book book;
    private final Mistakes mistakes;

    Doubts(Holding holding, Mistakes mistakes) {
        this.holding = holding;
        this.book = holding.book();
        this.mistakes = mistakes;
    }

    void year(int year) {
        switch (year) {
            case 2020 -> doubtGraft(LocalDate.of(2020, 10, 18));
            case 2022 -> tagGone(LocalDate.of(2022, 11, 20));
            case 2023 -> stolen(LocalDate.of(2023, 10, 2));
            default -> {}
        }
    }

    /** A graft of 13-004 fruits and is not like its mother. */
    private void doubtGraft(LocalDate day) {
        holding.inField()
                .filter(tree -> tree.labelled() != tree.truly()
                        && tree.labelled().cross().equals("13-004"))
                .min(Comparator.comparing(Tree::tag))
                .ifPresent(tree -> {
                    book.change(
                            Table.PLANTS,
                            tree.tag(),
                            "certainty",
                            "doubtful",
                            "note",
                            "fruit and leaf unlike those of its mother; two bundles were open that day");
                    note(
                            tree.tag(),
                            day,
                            "Put side by side with the own-root tree: other shape, other leaf. Wrong wood?");
                });
    }

    /** A tag is missing in block C; the plan tells what should stand there. */
    private void tagGone(LocalDate day) {
        Tree tree = standing("C", 2, 17);
        book.change(
                Table.PLANTS,
                tree.tag(),
                "certainty",
                "likely",
                "note",
                "tag gone in November 2022, number read from the plan");
        mistakes.tell(tree.tag(), "its tag was lost in 2022; the number read from the plan is right");
        note(tree.place().orElseThrow().toString(), day, "Tag gone, new one printed from the plan.");
    }

    private void stolen(LocalDate day) {
        Tree tree = standing("C", 1, 3);
        note(
                tree.labelled().code(),
                day,
                "Only the stake is left at " + tree.place().orElseThrow() + ". Dug out overnight.");
        holding.end(tree, "lost", day.toString(), "dug out by night");
    }

    private Tree standing(String block, int row, int from) {
        return holding.inField()
                .filter(tree -> tree.place()
                        .filter(place ->
                                place.block().code().equals(block) && place.row() == row && place.number() >= from)
                        .isPresent())
                .filter(tree -> tree.truly().isSeedling())
                .min(Comparator.comparingInt(tree -> tree.place().orElseThrow().number()))
                .orElseThrow();
    }

    private void note(String subject, LocalDate day, String text) {
        book.add(
                book.row(Table.NOTES).with("subject", subject).with("date", day).with("text", text));
    }
}
