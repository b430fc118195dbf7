package pippinry.crossing.internal.genes;

import java.util.ArrayList;
import java.util.List;

/**
 * Every whole case of a parent's genes: one pair of chromosomes for each linkage group of which something is told; the
 * others stay as expected.
 */
final class CasesOfGenes {

    private CasesOfGenes() {}

    /** The cases; empty when there are more than {@code most}. */
    static List<List<ParentGenes>> of(List<ParentGenes> groups, int most) {
        long number = 1;
        for (ParentGenes group : groups) {
            number = Math.min(
                    Integer.MAX_VALUE, number * Math.max(1, group.cases().size()));
        }
        List<List<ParentGenes>> cases = new ArrayList<>();
        if (number <= most) {
            combine(groups, new ArrayList<>(), cases);
        }
        return cases;
    }

    /** The chance of each case, in the same order. */
    static List<Double> chances(List<ParentGenes> groups) {
        List<Double> chances = List.of(1.0);
        for (ParentGenes group : groups) {
            List<Double> longer = new ArrayList<>();
            for (double sofar : chances) {
                if (group.cases().isEmpty()) {
                    longer.add(sofar);
                }
                group.cases().forEach(pair -> longer.add(sofar * pair.chance()));
            }
            chances = longer;
        }
        return chances;
    }

    private static void combine(List<ParentGenes> groups, List<ParentGenes> sofar, List<List<ParentGenes>> cases) {
        if (sofar.size() == groups.size()) {
            cases.add(List.copyOf(sofar));
            return;
        }
        ParentGenes group = groups.get(sofar.size());
        List<ParentGenes> choices = group.cases().isEmpty()
                ? List.of(group)
                : group.cases().stream().map(group::only).toList();
        for (ParentGenes choice : choices) {
            sofar.add(choice);
            combine(groups, sofar, cases);
            sofar.remove(sofar.size() - 1);
        }
    }
}
