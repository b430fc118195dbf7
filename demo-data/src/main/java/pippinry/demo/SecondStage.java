package pippinry.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The two second-stage trials, from the choice of what is copied to the tastings. */
final class SecondStage {

    private static final List<String> NICKNAMES =
            List.of("Gate End", "Late Lamp", "Stone Wall", "Half Moon", "Wet Foot");

    private final Holding holding;
    private final Bench bench;
    private final Choices choices;
    private final Upkeep upkeep;
    private final List<Genotype> firstEntries = new ArrayList<>();
    private Optional<Trial> growing = Optional.empty();
    private List<Tree> unread = List.of();

    SecondStage(Holding holding, Bench bench, Choices choices, Upkeep upkeep) {
        this.holding = holding;
        this.bench = bench;
        this.choices = choices;
        this.upkeep = upkeep;
    }

    void graft(int year) {
        switch (year) {
            case 2021 -> {
                firstEntries.addAll(choices.best(5, LocalDate.of(2021, 3, 1), "copy"));
                start("T1", firstEntries, List.of("FIE"), year);
            }
            case 2023 -> start("T2", choices.best(6, LocalDate.of(2023, 3, 1), "copy"), List.of("FIE", "GOD"), year);
            default -> {}
        }
    }

    private void start(String block, List<Genotype> selections, List<String> checks, int year) {
        Trial trial = new Trial(
                holding,
                bench,
                block,
                selections,
                checks.stream().map(holding::genotype).toList());
        unread = trial.graft(LocalDate.of(year, 3, 20));
        growing = Optional.of(trial);
    }

    void read(int year) {
        bench.read(unread, LocalDate.of(year, 3, 20), LocalDate.of(year, 7, 14));
        unread = List.of();
    }

    void plant(int year) {
        if (year == 2022 || year == 2024) {
            Trial trial = growing.orElseThrow();
            LocalDate day = LocalDate.of(year, 12, 10);
            choices.advance(trial.selections(), day.minusDays(3));
            trial.selections().forEach(this::select);
            trial.plant(day);
            giveAway(trial, day.plusDays(2));
        }
        if (year == 2022) {
            nickname();
        }
    }

    private void select(Genotype genotype) {
        holding.book().change(Table.GENOTYPES, genotype.code(), "kind", "selection");
    }

    private void nickname() {
        for (int i = 0; i < firstEntries.size(); i++) {
            upkeep.name(firstEntries.get(i).code(), NICKNAMES.get(i), "nickname", "2022", "");
        }
    }

    /** Of the spare copies one goes to somebody who grows it as a second copy far away, the rest into the nursery bed. */
    private void giveAway(Trial trial, LocalDate day) {
        List<Tree> spare = trial.spare();
        for (int i = 0; i < spare.size(); i++) {
            Tree tree = spare.get(i);
            if (i == 0) {
                upkeep.move(day, tree.tag(), "tree", "out", "a fellow breeder", "1 tree", "second copy away from here");
                holding.end(tree, "given", day.toString(), "");
            } else {
                holding.ground()
                        .plant(
                                holding.book(),
                                tree,
                                holding.ground().free("NUR").orElseThrow(),
                                day.toString());
            }
        }
    }

    /** Before Christmas, once the first trial bears. */
    void taste(int year) {
        if (year >= 2023) {
            List<Genotype> apples = new ArrayList<>(firstEntries);
            apples.add(holding.genotype("FIE"));
            apples.add(holding.genotype("GOD"));
            new TastingTable(holding)
                    .sit(apples, LocalDate.of(year, 12, 15), List.of("IN", "OD", "guest 1", "guest 2"));
        }
    }
}
