package pippinry.model;

import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Which rows come to cite a code, or cease to, in one step; so that the code's list changes once, however many rows do.
 *
 * @param <K> what stands for the code
 */
final class CitingDraft<K> {

    private final Map<K, Set<Integer>> gone = new HashMap<>();
    private final Map<K, Set<Integer>> come = new HashMap<>();

    void add(K code, int id) {
        come.computeIfAbsent(code, any -> new LinkedHashSet<>()).add(id);
    }

    /** Also takes back an {@link #add} of the same step. */
    void remove(K code, int id) {
        Set<Integer> fresh = come.get(code);
        if (fresh != null) {
            fresh.remove(id);
        }
        gone.computeIfAbsent(code, any -> new HashSet<>()).add(id);
    }

    Set<K> touched() {
        Set<K> touched = new LinkedHashSet<>(gone.keySet());
        touched.addAll(come.keySet());
        return touched;
    }

    /** The code's list after the step, ids ascending. */
    int[] merged(K code, int[] before) {
        Set<Integer> out = gone.getOrDefault(code, Set.of());
        Set<Integer> in = come.getOrDefault(code, Set.of());
        IntStream stay = Arrays.stream(before).filter(id -> !out.contains(id));
        return IntStream.concat(stay, in.stream().mapToInt(Integer::intValue))
                .sorted()
                .distinct()
                .toArray();
    }
}
