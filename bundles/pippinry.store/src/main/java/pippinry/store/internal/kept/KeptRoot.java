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
    static final int FORMAT = 1;

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
    /** Over all of the above but the trees, whose blocks have sums of their own. */
    int check;

    Instant time() {
        return Instant.ofEpochSecond(seconds, nanos);
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
                Arrays.toString(sizes));
        crc.update(all.getBytes(StandardCharsets.UTF_8));
        return (int) crc.getValue();
    }
}
