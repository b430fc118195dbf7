package pippinry.model.trie;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.IntFunction;

/**
 * A persistent map from text to values: a hash array mapped trie (Bagwell, P. 2001. Ideal Hash Trees. EPFL technical
 * report), path-copying, with bitmap-compressed nodes. Immutable, safe for any thread. Order is that of the hashes.
 */
public final class TextTrie<V> {

    private static final int BITS = 5;
    private static final int DEEPEST = 30;
    private static final TextTrie<?> EMPTY = new TextTrie<>(new Node(0, new Object[0]), 0);

    private record Pair(String key, Object value) {}

    /** Texts whose hashes are wholly alike. */
    private record Alike(Pair[] pairs) {}

    /** @param filled bit i is set when branch i is there; slots hold the branches that are, in order */
    private record Node(int filled, Object[] slots) {}

    private final Node root;
    private final int size;

    private TextTrie(Node root, int size) {
        this.root = root;
        this.size = size;
    }

    @SuppressWarnings("unchecked")
    public static <V> TextTrie<V> empty() {
        return (TextTrie<V>) EMPTY;
    }

    /**
     * All keys at once, which costs much less than one after another.
     *
     * @param value gives the value for the key's place in the list; the last counts where a key comes twice
     */
    public static <V> TextTrie<V> of(List<String> keys, IntFunction<V> value) {
        Map<String, Pair> pairs = new HashMap<>(keys.size() * 2);
        for (int i = 0; i < keys.size(); i++) {
            pairs.put(keys.get(i), new Pair(keys.get(i), value.apply(i)));
        }
        return new TextTrie<>(built(new ArrayList<>(pairs.values()), 0), pairs.size());
    }

    private static Node built(List<Pair> pairs, int level) {
        List<List<Pair>> branches = new ArrayList<>(Collections.nCopies(1 << BITS, null));
        int filled = 0;
        for (Pair pair : pairs) {
            int bit = bit(pair.key, level);
            int slot = Integer.numberOfTrailingZeros(bit);
            if (branches.get(slot) == null) {
                branches.set(slot, new ArrayList<>());
            }
            branches.get(slot).add(pair);
            filled |= bit;
        }
        Object[] slots = branches.stream()
                .filter(Objects::nonNull)
                .map(branch -> branch(branch, level + BITS))
                .toArray();
        return new Node(filled, slots);
    }

    private static Object branch(List<Pair> pairs, int level) {
        if (pairs.size() == 1) {
            return pairs.get(0);
        }
        return level > DEEPEST + BITS ? new Alike(pairs.toArray(Pair[]::new)) : built(pairs, level);
    }

    public int size() {
        return size;
    }

    @SuppressWarnings("unchecked")
    public Optional<V> get(String key) {
        Object found = find(key);
        return Optional.ofNullable((V) found);
    }

    public TextTrie<V> with(String key, V value) {
        int grown = find(key) == null ? size + 1 : size;
        return new TextTrie<>(put(root, 0, new Pair(key, value)), grown);
    }

    public TextTrie<V> without(String key) {
        return find(key) == null ? this : new TextTrie<>(cut(root, 0, key), size - 1);
    }

    @SuppressWarnings("unchecked")
    public void forEach(BiConsumer<String, ? super V> action) {
        walk(root, pair -> action.accept(pair.key(), (V) pair.value()));
    }

    private Object find(String key) {
        Object at = root;
        for (int level = 0; at instanceof Node node; level += BITS) {
            int bit = bit(key, level);
            at = (node.filled & bit) == 0 ? null : node.slots[index(node, bit)];
        }
        if (at instanceof Alike alike) {
            return Arrays.stream(alike.pairs)
                    .filter(pair -> pair.key.equals(key))
                    .map(Pair::value)
                    .findFirst()
                    .orElse(null);
        }
        return at instanceof Pair pair && pair.key.equals(key) ? pair.value : null;
    }

    private static Node put(Node node, int level, Pair added) {
        int bit = bit(added.key, level);
        int index = index(node, bit);
        if ((node.filled & bit) == 0) {
            return new Node(node.filled | bit, inserted(node.slots, index, added));
        }
        Object[] slots = node.slots.clone();
        slots[index] = merged(slots[index], level + BITS, added);
        return new Node(node.filled, slots);
    }

    private static Object merged(Object there, int level, Pair added) {
        if (there instanceof Node node) {
            return put(node, level, added);
        }
        if (there instanceof Alike alike) {
            return joined(alike, added);
        }
        Pair pair = (Pair) there;
        if (pair.key.equals(added.key)) {
            return added;
        }
        if (level > DEEPEST + BITS) {
            return new Alike(new Pair[] {pair, added});
        }
        return put(put(new Node(0, new Object[0]), level, pair), level, added);
    }

    private static Alike joined(Alike alike, Pair added) {
        Pair[] kept = Arrays.stream(alike.pairs)
                .filter(pair -> !pair.key.equals(added.key))
                .toArray(Pair[]::new);
        Pair[] pairs = Arrays.copyOf(kept, kept.length + 1);
        pairs[kept.length] = added;
        return new Alike(pairs);
    }

    private static Node cut(Node node, int level, String key) {
        int bit = bit(key, level);
        int index = index(node, bit);
        Object below = below(node.slots[index], level + BITS, key);
        if (below == null) {
            return new Node(node.filled & ~bit, deleted(node.slots, index));
        }
        Object[] slots = node.slots.clone();
        slots[index] = below;
        return new Node(node.filled, slots);
    }

    /** What is left of a branch without the key; null if nothing. */
    private static Object below(Object branch, int level, String key) {
        if (branch instanceof Node node) {
            Node left = cut(node, level, key);
            boolean lone = left.slots.length == 1 && !(left.slots[0] instanceof Node);
            return lone ? left.slots[0] : left;
        }
        if (branch instanceof Alike alike) {
            Pair[] kept = Arrays.stream(alike.pairs)
                    .filter(pair -> !pair.key.equals(key))
                    .toArray(Pair[]::new);
            return kept.length == 1 ? kept[0] : new Alike(kept);
        }
        return null;
    }

    private static void walk(Object at, java.util.function.Consumer<Pair> action) {
        if (at instanceof Node node) {
            for (Object slot : node.slots) {
                walk(slot, action);
            }
        } else if (at instanceof Alike alike) {
            Arrays.asList(alike.pairs).forEach(action);
        } else {
            action.accept((Pair) at);
        }
    }

    private static Object[] inserted(Object[] slots, int index, Object value) {
        Object[] more = new Object[slots.length + 1];
        System.arraycopy(slots, 0, more, 0, index);
        more[index] = value;
        System.arraycopy(slots, index, more, index + 1, slots.length - index);
        return more;
    }

    private static Object[] deleted(Object[] slots, int index) {
        Object[] fewer = new Object[slots.length - 1];
        System.arraycopy(slots, 0, fewer, 0, index);
        System.arraycopy(slots, index + 1, fewer, index, fewer.length - index);
        return fewer;
    }

    /** The last level has two bits of hash left; one more level, all alike, ends the tree. */
    private static int bit(String key, int level) {
        return level > DEEPEST ? 1 : 1 << ((spread(key) >>> level) & 31);
    }

    private static int index(Node node, int bit) {
        return Integer.bitCount(node.filled & (bit - 1));
    }

    private static int spread(String key) {
        int hash = key.hashCode();
        return hash ^ (hash >>> 16);
    }
}
