package pippinry.model.trie;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class TriesAgreeWithJdkMapsTest {

    /** "Aa" and "BB" have one hash, so words of these syllables collide in whole groups. */
    private static final String[] SYLLABLES = {"Aa", "BB", "C"};

    @Test
    void textTrieHoldsWhatAHashMapHolds() {
        Random random = new Random(1);
        Map<String, Integer> expected = new HashMap<>();
        TextTrie<Integer> trie = TextTrie.empty();
        for (int step = 0; step < 20_000; step++) {
            String key = word(random);
            if (random.nextInt(3) == 0) {
                expected.remove(key);
                trie = trie.without(key);
            } else {
                expected.put(key, step);
                trie = trie.with(key, step);
            }
        }
        Map<String, Integer> held = new HashMap<>();
        trie.forEach(held::put);
        assertEquals(expected, held);
        assertEquals(expected.size(), trie.size());
        for (String key : expected.keySet()) {
            assertEquals(Optional.of(expected.get(key)), trie.get(key));
        }
    }

    @Test
    void intTrieHoldsWhatATreeMapHoldsInItsOrder() {
        Random random = new Random(2);
        TreeMap<Integer, Integer> expected = new TreeMap<>();
        IntTrie<Integer> trie = IntTrie.empty();
        for (int step = 0; step < 20_000; step++) {
            int key = random.nextInt(10) == 0 ? random.nextInt() & Integer.MAX_VALUE : random.nextInt(3_000);
            if (random.nextInt(3) == 0) {
                expected.remove(key);
                trie = trie.without(key);
            } else {
                expected.put(key, step);
                trie = trie.with(key, step);
            }
        }
        Map<Integer, Integer> held = new java.util.LinkedHashMap<>();
        trie.forEach((value, key) -> held.put(key, value));
        assertEquals(expected.toString(), held.toString());
        assertEquals(expected.size(), trie.size());
    }

    @Test
    void triesBuiltAtOnceAreLikeThoseBuiltOneByOne() {
        Random random = new Random(3);
        for (int size : new int[] {0, 1, 31, 32, 33, 1024, 1025, 3_000}) {
            List<String> keys = new ArrayList<>();
            List<Integer> values = new ArrayList<>();
            TextTrie<Integer> texts = TextTrie.empty();
            IntTrie<Integer> ints = IntTrie.empty();
            for (int i = 0; i < size; i++) {
                keys.add(word(random));
                values.add(random.nextInt(4) == 0 ? null : i);
                texts = texts.with(keys.get(i), i);
                ints = values.get(i) == null ? ints : ints.with(i, i);
            }
            TextTrie<Integer> textsAtOnce = TextTrie.of(keys, i -> i);
            IntTrie<Integer> intsAtOnce = IntTrie.of(values);
            assertEquals(texts.size(), textsAtOnce.size());
            assertEquals(ints.size(), intsAtOnce.size());
            for (int i = 0; i < size; i++) {
                assertEquals(texts.get(keys.get(i)), textsAtOnce.get(keys.get(i)));
                assertEquals(ints.get(i), intsAtOnce.get(i));
                textsAtOnce = textsAtOnce.with(keys.get(i), -i);
                assertEquals(Optional.of(-i), textsAtOnce.get(keys.get(i)));
                texts = texts.with(keys.get(i), -i);
            }
        }
    }

    @Test
    void anOldCopyNeverChanges() {
        IntTrie<String> before = IntTrie.<String>empty().with(7, "old");
        IntTrie<String> after = before.with(7, "new").with(100_000, "far").without(7);
        assertEquals(Optional.of("old"), before.get(7));
        assertEquals(Optional.empty(), before.get(100_000));
        assertEquals(Optional.empty(), after.get(7));
    }

    private static String word(Random random) {
        StringBuilder word = new StringBuilder();
        for (int syllables = random.nextInt(7); syllables >= 0; syllables--) {
            word.append(SYLLABLES[random.nextInt(3)]);
        }
        return word.toString();
    }
}
