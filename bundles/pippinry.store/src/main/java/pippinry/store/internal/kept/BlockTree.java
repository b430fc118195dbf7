package pippinry.store.internal.kept;

import java.util.BitSet;
import java.util.function.ObjIntConsumer;

/**
 * A persistent tree of blocks made of nothing but arrays, so that what is stored has no class of its own: six levels of
 * 16-way nodes, the last of which hold the blocks. A changed copy shares all nodes but one path with its original.
 */
final class BlockTree {

    private static final int BITS = 4;
    private static final int WIDTH = 1 << BITS;
    private static final int TOP = 5 * BITS;

    /** Blocks are numbered from 0 to below this. */
    static final int CAPACITY = 1 << (TOP + BITS);

    private BlockTree() {}

    static Object[] empty() {
        return new Object[WIDTH];
    }

    /** With all these blocks as the source gives them. */
    static Object[] with(Object[] tree, BitSet numbers, BlockSource source) {
        Object[] next = tree;
        for (int number = numbers.nextSetBit(0); number >= 0; number = numbers.nextSetBit(number + 1)) {
            next = with(next, number, source.block(number));
        }
        return next;
    }

    /** @param block null to take it out */
    static Object[] with(Object[] tree, int number, byte[] block) {
        return with(tree, TOP, number, block);
    }

    private static Object[] with(Object[] node, int level, int number, byte[] block) {
        Object[] copy = node == null ? new Object[WIDTH] : node.clone();
        int slot = (number >>> level) & (WIDTH - 1);
        copy[slot] = level == 0 ? block : with((Object[]) copy[slot], level - BITS, number, block);
        return copy;
    }

    static void forEach(Object[] tree, ObjIntConsumer<byte[]> action) {
        walk(tree, TOP, 0, action);
    }

    private static void walk(Object[] node, int level, int base, ObjIntConsumer<byte[]> action) {
        for (int slot = 0; slot < node.length; slot++) {
            if (node[slot] != null && level == 0) {
                action.accept((byte[]) node[slot], base + slot);
            } else if (node[slot] != null) {
                walk((Object[]) node[slot], level - BITS, base + (slot << level), action);
            }
        }
    }
}
