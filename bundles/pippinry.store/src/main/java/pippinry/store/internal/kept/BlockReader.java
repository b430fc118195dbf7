package pippinry.store.internal.kept;

import java.nio.charset.StandardCharsets;

/** Reads what {@link BlockWriter} wrote. */
final class BlockReader {

    private final byte[] block;
    private int at = BlockWriter.SUM_LENGTH;

    /** @throws NotWhole if the block's sum is wrong */
    BlockReader(byte[] block) {
        this.block = block;
        if (block.length < BlockWriter.SUM_LENGTH || stated() != BlockWriter.sum(block, block.length)) {
            throw new NotWhole("a block has a wrong sum");
        }
    }

    private int stated() {
        int sum = 0;
        for (int i = 0; i < BlockWriter.SUM_LENGTH; i++) {
            sum |= (block[i] & 0xff) << 8 * i;
        }
        return sum;
    }

    int number() {
        int value = 0;
        for (int shift = 0; ; shift += 7) {
            byte b = block[at++];
            value |= (b & 0x7f) << shift;
            if (b >= 0) {
                return value;
            }
        }
    }

    String text() {
        int length = number();
        String text = length == 0 ? "" : new String(block, at, length, StandardCharsets.UTF_8);
        at += length;
        return text;
    }
}
