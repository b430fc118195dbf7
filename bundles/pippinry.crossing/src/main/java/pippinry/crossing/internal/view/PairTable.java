package pippinry.crossing.internal.view;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import pippinry.crossing.internal.rank.RankedPair;
import pippinry.model.record.Genotype;
import pippinry.model.value.Code;

/**
 * Pairs by their parents, who stand in the order of their best pair.
 *
 * @param notes what holds for all pairs
 * @param complete reckons seedlings, flowers and reasons of a pair
 */
record PairTable(
        List<String> seeds,
        List<String> pollens,
        Map<String, RankedPair> pairs,
        Optional<RankedPair> best,
        List<String> notes,
        UnaryOperator<RankedPair> complete) {

    static PairTable empty() {
        return new PairTable(List.of(), List.of(), Map.of(), Optional.empty(), List.of(), UnaryOperator.identity());
    }

    static PairTable of(List<RankedPair> ranked, List<String> notes, UnaryOperator<RankedPair> complete) {
        Set<String> seeds = new LinkedHashSet<>();
        Set<String> pollens = new LinkedHashSet<>();
        Map<String, RankedPair> pairs = new HashMap<>();
        for (RankedPair pair : ranked) {
            seeds.add(pair.seedParent().text());
            pollens.add(pair.pollenParent().text());
            pairs.put(key(pair.seedParent().text(), pair.pollenParent().text()), pair);
        }
        return new PairTable(
                List.copyOf(seeds), List.copyOf(pollens), pairs, ranked.stream().findFirst(), notes, complete);
    }

    Optional<RankedPair> pair(int row, int column) {
        return row < seeds.size() && column < pollens.size()
                ? Optional.ofNullable(pairs.get(key(seeds.get(row), pollens.get(column))))
                : Optional.empty();
    }

    /** Row and column of a pair. */
    Optional<int[]> placeOf(Optional<RankedPair> pair) {
        return pair.map(known -> new int[] {
            seeds.indexOf(known.seedParent().text()),
            pollens.indexOf(known.pollenParent().text())
        });
    }

    boolean hasParent(Code<Genotype> genotype) {
        return seeds.contains(genotype.text()) || pollens.contains(genotype.text());
    }

    private static String key(String seed, String pollen) {
        return seed + "\n" + pollen;
    }
}
