package pippinry.store.internal.kept;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Arrays;
import java.util.zip.CRC32C;

/**
 * The one class that the store folder holds besides arrays: a program as blocks of bytes. Its fields never change; what
 * is in the blocks is told by {@link #FORMAT}, and a folder of another format is made again from the ledger.
 */
final class KeptRoot {

    /** Goes up whenever blocks are written in another way. */
    static final int FORMAT = 2;

    int format = FORMAT;
    long edit;
    /** Of the ledger at that edit. */
    int sum;

    long seconds;
    int nanos;
    /** For each table its name and columns, as they were when the blocks were written. */
    String[] shapes;
    /** For each table the id of the next new row. */
    int[] nextIds;
    /** For each table how many rows it has. */
    int[] sizes;
    /** For each table its {@link BlockTree}. */
    Object[][] trees;
    /** For each table that is kept in pages how many words these name; 0 for others. */
    int[] wordCounts;
    /** For each table the {@link BlockTree} of its words. */
    Object[][] wordTrees;
    /** Over all of the above but the trees, whose blocks have sums of their own. */
    int check;

    /** A program before its first edit. */
    static KeptRoot empty() {
        KeptRoot root = new KeptRoot();
        root.shapes = Shapes.all();
        int tables = root.shapes.length;
        root.nextIds = new int[tables];
        root.sizes = new int[tables];
        root.wordCounts = new int[tables];
        root.trees = new Object[tables][];
        root.wordTrees = new Object[tables][];
        Arrays.setAll(root.trees, table -> BlockTree.empty());
        Arrays.setAll(root.wordTrees, table -> BlockTree.empty());
        return root;
    }

    /** What is stored once is not looked into again, so whatever changes must be a new object. */
    void renewArrays() {
        nextIds = nextIds.clone();
        sizes = sizes.clone();
        wordCounts = wordCounts.clone();
        trees = trees.clone();
        wordTrees = wordTrees.clone();
    }

    Instant time() {
        return Instant.ofEpochSecond(seconds, nanos);
    }

    /** Bytes of all blocks. */
    long length() {
        long[] length = {0};
        for (Object[][] all : new Object[][][] {trees, wordTrees}) {
            for (Object[] tree : all) {
                BlockTree.forEach(tree, (block, number) -> length[0] += block.length);
            }
        }
        return length[0];
    }

    void seal() {
        check = reckonCheck();
    }

    boolean isWhole() {
        return check == reckonCheck();
    }

    private int reckonCheck() {
        CRC32C crc = new CRC32C();
        String all = String.join(
                "\n",
                Integer.toString(format),
                Long.toString(edit),
                Integer.toString(sum),
                time().toString(),
                Arrays.toString(shapes),
                Arrays.toString(nextIds),
                Arrays.toString(sizes),
                Arrays.toString(wordCounts));
        crc.update(all.getBytes(StandardCharsets.UTF_8));
        return (int) crc.getValue();
    }
}
