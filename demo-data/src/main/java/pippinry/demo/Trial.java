package pippinry.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** A second-stage trial: every row of the block holds each entry once, in an order of its own. */
final class Trial {

    private final Holding holding;
    private final Bench bench;
    private final String block;
    private final List<Genotype> selections;
    private final List<Genotype> entries;
    private final List<Tree> grafts = new ArrayList<>();

    Trial(Holding holding, Bench bench, String block, List<Genotype> selections, List<Genotype> checks) {
        this.holding = holding;
        this.bench = bench;
        this.block = block;
        this.selections = List.copyOf(selections);
        this.entries = new ArrayList<>(selections);
        this.entries.addAll(checks);
    }

    List<Genotype> selections() {
        return selections;
    }

    /** Copies on M.9, two more of each than the trial has rows. */
    List<Tree> graft(LocalDate day) {
        int rows = holding.ground().block(block).rows();
        for (Genotype entry : entries) {
            Tree wood = holding.inField()
                    .filter(tree -> tree.labelled() == entry)
                    .findFirst()
                    .orElseThrow(() -> new IllegalStateException("no wood of " + entry));
            for (int copy = 0; copy < rows + 2; copy++) {
                grafts.add(bench.graft(wood, "M9", day));
            }
        }
        return List.copyOf(grafts);
    }

    void plant(LocalDate day) {
        BlockPlan plan = holding.ground().block(block);
        for (int row = 1; row <= plan.rows(); row++) {
            List<Genotype> order = new ArrayList<>(entries);
            Dice.of("trial", block, row).shuffle(order);
            int place = 1;
            for (Genotype entry : order) {
                plant(entry, row, place, day);
                place++;
            }
        }
    }

    private void plant(Genotype entry, int row, int place, LocalDate day) {
        spare().stream().filter(graft -> graft.labelled() == entry).findFirst().ifPresent(graft -> holding.ground()
                .plant(holding.book(), graft, holding.ground().place(block, row, place), day.toString()));
    }

    /** Alive and without a place. */
    List<Tree> spare() {
        return grafts.stream()
                .filter(graft -> graft.alive() && graft.place().isEmpty())
                .toList();
    }
}
