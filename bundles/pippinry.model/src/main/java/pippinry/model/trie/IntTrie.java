package pippinry.model.trie;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.ObjIntConsumer;

/**
 * A persistent map from small non-negative numbers to values: a changed copy shares all nodes but one path with its
 * original, so a change costs in proportion to log32 of the largest number, and an old copy never changes.
 *
 * <p>A path-copying radix tree of 32-way nodes (Bagwell, P. 2001. Ideal Hash Trees. EPFL technical report), keyed by
 * the number itself. Immutable, safe for any thread.
 */
public final class IntTrie<V> {

    private static final int BITS = 5;
    private static final int WIDTH = 1 << BITS;
    private static final IntTrie<?> EMPTY = new IntTrie<>(new Object[WIDTH], 0, 0);

    private final Object[] root;
    private final int shift;
    private final int size;

    private IntTrie(Object[] root, int shift, int size) {
        this.root = root;
        this.shift = shift;
        this.size = size;
    }

    @SuppressWarnings("unchecked")
    public static <V> IntTrie<V> empty() {
        return (IntTrie<V>) EMPTY;
    }

    /** The values numbered from 0 in the order of the list; null for a number without one. */
    public static <V> IntTrie<V> of(List<V> values) {
        int shift = 0;
        while (beyond(Math.max(values.size() - 1, 0), shift)) {
            shift += BITS;
        }
        int size = (int) values.stream().filter(Objects::nonNull).count();
        return size == 0 ? empty() : new IntTrie<>(built(values, shift, 0), shift, size);
    }

    private static Object[] built(List<?> values, int level, int base) {
        Object[] node = new Object[WIDTH];
        for (int slot = 0; slot < WIDTH && base + (slot << level) < values.size(); slot++) {
            int number = base + (slot << level);
            node[slot] = level == 0 ? values.get(number) : built(values, level - BITS, number);
        }
        return node;
    }

    /** How many numbers have a value. */
    public int size() {
        return size;
    }

    @SuppressWarnings("unchecked")
    public Optional<V> get(int number) {
        if (number < 0 || beyond(number, shift)) {
            return Optional.empty();
        }
        Object node = root;
        for (int level = shift; level >= 0 && node != null; level -= BITS) {
            node = ((Object[]) node)[slot(number, level)];
        }
        return Optional.ofNullable((V) node);
    }

    /** @param value never null */
    public IntTrie<V> with(int number, V value) {
        if (number < 0) {
            throw new IndexOutOfBoundsException(number);
        }
        Object[] top = root;
        int level = shift;
        while (beyond(number, level)) {
            Object[] above = new Object[WIDTH];
            above[0] = top;
            top = above;
            level += BITS;
        }
        int grown = get(number).isPresent() ? size : size + 1;
        return new IntTrie<>(set(top, level, number, value), level, grown);
    }

    public IntTrie<V> without(int number) {
        return get(number).isEmpty() ? this : new IntTrie<>(set(root, shift, number, null), shift, size - 1);
    }

    /** Visits every value in the order of the numbers. */
    public void forEach(ObjIntConsumer<? super V> action) {
        walk(root, shift, 0, action);
    }

    private static Object[] set(Object[] node, int level, int number, Object value) {
        Object[] copy = node == null ? new Object[WIDTH] : Arrays.copyOf(node, WIDTH);
        int slot = slot(number, level);
        copy[slot] = level == 0 ? value : set((Object[]) copy[slot], level - BITS, number, value);
        return copy;
    }

    @SuppressWarnings("unchecked")
    private static <V> void walk(Object[] node, int level, int base, ObjIntConsumer<? super V> action) {
        for (int slot = 0; slot < WIDTH; slot++) {
            Object below = node[slot];
            if (below != null && level == 0) {
                action.accept((V) below, base + slot);
            } else if (below != null) {
                walk((Object[]) below, level - BITS, base + (slot << level), action);
            }
        }
    }

    private static boolean beyond(int number, int level) {
        return level + BITS < Integer.SIZE - 1 && number >>> (level + BITS) != 0;
    }

    private static int slot(int number, int level) {
        return (number >>> level) & (WIDTH - 1);
    }
}
